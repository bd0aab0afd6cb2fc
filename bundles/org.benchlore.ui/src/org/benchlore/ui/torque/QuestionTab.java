// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.benchlore.torque.answer.Field;
import org.benchlore.torque.answer.WrongInput;
import org.benchlore.ui.page.PageCanvas;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** The inputs of one kind of question, and beside them the answer, which follows every letter. */
final class QuestionTab {

    private static final int INPUT_WIDTH = 330;

    private final QuestionKind kind;
    private final Composite area;
    private final ScrolledComposite scroll;
    private final Composite column;
    private final List<InputLine> lines;
    private final PageCanvas answer;
    private boolean filling;

    QuestionTab(Composite parent, QuestionKind kind, int zoom) {
        this.kind = kind;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 0).applyTo(area);
        scroll = new ScrolledComposite(area, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        GridDataFactory.fillDefaults().grab(false, true).hint(INPUT_WIDTH, SWT.DEFAULT).applyTo(scroll);
        column = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 6).spacing(6, 3).applyTo(column);
        lines = kind.inputs().stream().map(input -> new InputLine(column, id(input.field()), input, this::ask)).toList();
        scroll.setContent(column);
        scroll.addListener(SWT.Resize, this::fit);
        answer = new PageCanvas(area, "torque." + kind.id() + ".answer", zoom, address -> { });
        GridDataFactory.fillDefaults().grab(true, true).applyTo(answer.control());
        ask();
    }

    private String id(Field field) {
        return "torque." + kind.id() + "." + field.name().toLowerCase(Locale.ROOT);
    }

    Control control() {
        return area;
    }

    void focus() {
        lines.stream().filter(line -> line.input().required() && line.get().isBlank()).findFirst()
                .orElse(lines.get(0)).focus();
    }

    /** Writes into the inputs; those that are not named are emptied, fixed ones stay. */
    void fill(Map<Field, String> words) {
        filling = true;
        for (var line : lines) {
            if (words.containsKey(line.input().field()) || !line.input().fixed()) {
                line.set(words.getOrDefault(line.input().field(), ""));
            }
        }
        filling = false;
        ask();
    }

    /** Answers anew. */
    void ask() {
        if (filling) {
            return;
        }
        if (lines.stream().anyMatch(line -> line.input().required() && line.get().isBlank())) {
            say(null);
            answer.show(AnswerPage.guidance(kind), Map.of());
            return;
        }
        try {
            var answered = kind.ask().apply(entered());
            say(null);
            answer.show(AnswerPage.of(answered), Map.of());
        } catch (WrongInput e) {
            say(e);
            answer.show(AnswerPage.refusal(kind, e.getMessage()), Map.of());
        }
    }

    private Entered entered() {
        var words = new EnumMap<Field, String>(Field.class);
        lines.forEach(line -> words.put(line.input().field(), line.get()));
        return new Entered(words);
    }

    private void say(WrongInput wrong) {
        boolean moved = false;
        for (var line : lines) {
            boolean isHere = wrong != null && line.input().field() == wrong.field();
            moved |= line.say(isHere ? wrong.getMessage() : "");
        }
        if (moved) {
            fit(null);
        }
    }

    private void fit(Event event) {
        int width = scroll.getClientArea().width;
        scroll.setMinSize(column.computeSize(width > 0 ? width : INPUT_WIDTH, SWT.DEFAULT));
        column.layout(true, true);
    }
}
