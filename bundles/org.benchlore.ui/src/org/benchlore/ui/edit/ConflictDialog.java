// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.benchlore.model.compare.MergeConflict;
import org.benchlore.model.compare.Side;
import org.benchlore.page.Labels;
import org.benchlore.ui.Ids;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Shows, field by field, what one wrote and what lies on the disk meanwhile. Nothing is chosen beforehand. */
final class ConflictDialog extends Dialog {

    private static final Point SIZE = new Point(700, 480);
    private static final int INDENT = 16;

    private final String title;
    private final List<MergeConflict> questions;
    private final Map<String, Side> answers = new HashMap<>();
    private final List<Button> mine = new ArrayList<>();
    private final List<Button> theirs = new ArrayList<>();
    private ScrolledComposite scrolled;

    ConflictDialog(Shell shell, String title, List<MergeConflict> questions) {
        super(shell);
        this.title = title;
        this.questions = questions;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** The answers, by question. */
    Map<String, Side> answers() {
        return Map.copyOf(answers);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.conflictTitle);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        var intro = new Label(area, SWT.WRAP);
        intro.setText(NLS.bind(questions.isEmpty() ? Messages.conflictNone : Messages.conflictIntro,
                title.replace("&", "&&")));
        intro.setData(Ids.WIDGET_ID, "conflict.intro");
        GridDataFactory.fillDefaults().grab(true, false).hint(SIZE.x / 2, SWT.DEFAULT).applyTo(intro);
        if (!questions.isEmpty()) {
            createAll(area);
            createQuestions(area);
        }
        return area;
    }

    private void createAll(Composite area) {
        var bar = new Composite(area, SWT.NONE);
        bar.setLayout(new RowLayout());
        all(bar, Messages.allMine, "conflict.allMine", mine);
        all(bar, Messages.allTheirs, "conflict.allTheirs", theirs);
    }

    private void all(Composite bar, String words, String id, List<Button> side) {
        var button = new Button(bar, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> {
            mine.forEach(radio -> radio.setSelection(side == mine));
            theirs.forEach(radio -> radio.setSelection(side == theirs));
            questions.forEach(question -> answers.put(question.id(), side == mine ? Side.MINE : Side.THEIRS));
            updateButtons();
        });
    }

    private void createQuestions(Composite area) {
        scrolled = new ScrolledComposite(area, SWT.V_SCROLL | SWT.BORDER);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        scrolled.setShowFocusedControl(true);
        GridDataFactory.fillDefaults().grab(true, true).hint(1, SIZE.y / 2).applyTo(scrolled);
        var content = new Composite(scrolled, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(8, 8).spacing(0, 10).applyTo(content);
        for (int i = 0; i < questions.size(); i++) {
            create(content, questions.get(i), i);
        }
        scrolled.setContent(content);
        scrolled.addListener(SWT.Resize, event -> {
            int width = scrolled.getClientArea().width;
            scrolled.setMinSize(content.computeSize(width, SWT.DEFAULT, true));
        });
    }

    private void create(Composite content, MergeConflict question, int number) {
        var group = new Composite(content, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        var place = words(group, Labels.capital(question.place()), 0);
        place.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        words(group, NLS.bind(Messages.conflictBefore, question.base()), INDENT);
        mine.add(radio(group, "conflict.mine." + number, NLS.bind(Messages.conflictMine, question.mine()),
                question, Side.MINE));
        theirs.add(radio(group, "conflict.theirs." + number, NLS.bind(Messages.conflictTheirs, question.theirs()),
                question, Side.THEIRS));
    }

    private static Label words(Composite group, String words, int indent) {
        var label = new Label(group, SWT.WRAP);
        label.setText(words.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).indent(indent, 0).hint(1, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private Button radio(Composite group, String id, String words, MergeConflict question, Side side) {
        var radio = new Button(group, SWT.RADIO | SWT.WRAP);
        radio.setText(words.replace("&", "&&"));
        radio.setData(Ids.WIDGET_ID, id);
        GridDataFactory.fillDefaults().grab(true, false).indent(INDENT, 0).hint(1, SWT.DEFAULT).applyTo(radio);
        radio.addListener(SWT.Selection, event -> {
            if (radio.getSelection()) {
                answers.put(question.id(), side);
                updateButtons();
            }
        });
        return radio;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.takeAndSave, true).setData(Ids.WIDGET_ID, "conflict.ok");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        updateButtons();
    }

    private void updateButtons() {
        getButton(IDialogConstants.OK_ID).setEnabled(answers.size() == questions.size());
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Point getInitialSize() {
        var size = super.getInitialSize();
        return questions.isEmpty() ? size : new Point(Math.max(size.x, SIZE.x), Math.max(size.y, SIZE.y));
    }
}
