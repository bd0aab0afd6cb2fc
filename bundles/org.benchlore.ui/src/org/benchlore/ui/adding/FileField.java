// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.Optional;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A field for the path of a file, and a button that chooses one. */
final class FileField {

    private final Text path;
    private final int style;
    private final String[] endings;
    private Optional<String> chosen = Optional.empty();

    /** Makes it; {@code style} is SWT.OPEN or SWT.SAVE, endings as {@code *.html}. */
    FileField(Composite parent, String id, String words, int style, String... endings) {
        this.style = style;
        this.endings = endings;
        new Label(parent, SWT.NONE).setText(words);
        var row = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 0).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        path = new Text(row, SWT.BORDER);
        path.setData(Ids.WIDGET_ID, id);
        Keys.name(path, words.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).applyTo(path);
        var choose = new Button(row, SWT.PUSH);
        choose.setText(Messages.choose);
        Keys.name(choose, words.replace("&", "") + ": " + Messages.choose);
        choose.addListener(SWT.Selection, event -> choose());
    }

    private void choose() {
        var dialog = new FileDialog(path.getShell(), style);
        dialog.setFilterExtensions(endings);
        dialog.setOverwrite(true);
        dialog.setFileName(path.getText());
        Optional.ofNullable(dialog.open()).ifPresent(file -> {
            chosen = Optional.of(file);
            path.setText(file);
        });
    }

    Text control() {
        return path;
    }

    String text() {
        return path.getText();
    }

    /** Whether it was chosen in the system's dialog, which asks before a file is written over. */
    boolean isChosen() {
        return chosen.filter(path.getText()::equals).isPresent();
    }
}
