// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.benchlore.pack.PackException;
import org.benchlore.pack.learn.Progress;
import org.benchlore.pack.take.Preview;
import org.benchlore.pack.zip.PackFile;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** Takes a pack or a learner's progress into the library of the window, and takes the last pack back. */
public final class TakeAction {

    private static final int HEAD = 200;

    private final Shell shell;
    private final OpenLibrary library;

    /**
     * Makes the action.
     *
     * @param shell the window
     * @param library the library that takes it
     */
    public TakeAction(Shell shell, OpenLibrary library) {
        this.shell = shell;
        this.library = library;
    }

    /** Asks for the file. */
    public void choose() {
        var dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText(Messages.takeTitle);
        dialog.setFilterExtensions(new String[] {"*.zip;*.txt", "*.*"});
        dialog.setFilterNames(new String[] {Messages.takeFiles, Messages.allFiles});
        var file = dialog.open();
        if (file != null) {
            take(Path.of(file));
        }
    }

    /**
     * Looks through a file and shows what taking it would do.
     *
     * @param file a library pack or a progress file
     */
    public void take(Path file) {
        try {
            if (isProgress(file)) {
                new ProgressDialog(shell, library.trainings(), Progress.read(Files.readString(file))).open();
                return;
            }
        } catch (IOException e) {
            complain(NLS.bind(Messages.unreadable, file));
            return;
        } catch (PackException e) {
            complain(e.getMessage());
            return;
        }
        new Waiting(shell, this::complain).on(monitor -> preview(file, monitor))
                .ifPresent(preview -> new TakeDialog(shell, library, file, preview).open());
    }

    private static boolean isProgress(Path file) throws IOException {
        try (var stream = Files.newInputStream(file)) {
            return Progress.isProgress(new String(stream.readNBytes(HEAD), StandardCharsets.UTF_8));
        }
    }

    private Preview preview(Path file, IProgressMonitor monitor) throws IOException, PackException {
        var progress = SubMonitor.convert(monitor, 2);
        try (var pack = PackFile.open(file, progress.split(1))) {
            return library.taking().preview(pack, progress.split(1));
        }
    }

    /** Puts everything back as it was before the last pack, once somebody has said so. */
    public void askBack() {
        if (MessageDialog.openQuestion(shell, Messages.backTitle, Messages.backQuestion)) {
            back();
        }
    }

    /** Puts everything back as it was before the last pack. */
    public void back() {
        new Waiting(shell, this::complain).on(monitor -> library.taking().back()).ifPresent(paths ->
                new ResultDialog(shell, Messages.backTitle, NLS.bind(Messages.putBack, paths.size()), paths).open());
    }

    private void complain(String sentence) {
        new ResultDialog(shell, Messages.takeTitle, sentence, List.of()).open();
    }
}
