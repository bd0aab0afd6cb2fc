// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import java.nio.file.Path;
import java.util.Optional;

import org.benchlore.ui.session.LibrarySession;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;

/** Asks which library to open, and where to make a new one. */
public final class LibraryDialogs {

    private final Shell shell;
    private final LibrarySession session;

    /**
     * Makes the dialogs.
     *
     * @param shell the window they belong to
     * @param session opens what is chosen
     */
    public LibraryDialogs(Shell shell, LibrarySession session) {
        this.shell = shell;
        this.session = session;
    }

    /** Asks for a library's folder and opens it. */
    public void open() {
        folder(Messages.openTitle, Messages.openWhich).ifPresent(session::open);
    }

    /** Asks for an empty folder and a title, makes a library there and opens it. */
    public void create() {
        folder(Messages.newTitle, Messages.newWhere).ifPresent(folder -> {
            var dialog = new InputDialog(shell, Messages.newTitle, Messages.newName, "",
                    typed -> typed.isBlank() ? Messages.nameMissing : null);
            if (dialog.open() == Window.OK) {
                session.create(folder, dialog.getValue().strip());
            }
        });
    }

    private Optional<Path> folder(String title, String message) {
        var dialog = new DirectoryDialog(shell);
        dialog.setText(title);
        dialog.setMessage(message);
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }
}
