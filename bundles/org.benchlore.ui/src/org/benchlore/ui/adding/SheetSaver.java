// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.edit.desk.QuickChange;
import org.benchlore.model.JobRecord;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.Failures;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.status.LastChange;
import org.benchlore.workshop.CustomerSheets;
import org.benchlore.workshop.OfferedWork;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.program.Program;
import org.eclipse.ui.IWorkbenchWindow;

/** Saves a sheet, opens it, and writes what it offers into the job's record, which one key takes back. */
final class SheetSaver {

    private final IWorkbenchWindow window;
    private final SheetBasis basis;
    private final WindowThread thread;
    private final Consumer<String> said;

    SheetSaver(IWorkbenchWindow window, SheetBasis basis, WindowThread thread, Consumer<String> said) {
        this.window = window;
        this.basis = basis;
        this.thread = thread;
        this.said = said;
    }

    /**
     * Where a sheet goes.
     *
     * @param file path as typed
     * @param mayReplace whether somebody has agreed that the file is written over
     * @param isOpened whether it is opened then
     */
    record Target(String file, boolean mayReplace, boolean isOpened) {
    }

    /** Saves it beside the window's thread; {@code declined} is there where the offers are to be written down. */
    void save(SheetWork.Made made, Target target, Optional<List<String>> declined) {
        var file = path(target.file());
        if (file.isEmpty()) {
            said.accept(NLS.bind(Messages.noSheetFile, target.file().strip()));
            return;
        }
        Job.create(Messages.savingSheet, monitor -> {
            var sentence = write(made, file.get(), target.mayReplace());
            thread.run(() -> {
                if (sentence.isPresent()) {
                    said.accept(sentence.get());
                } else {
                    written(file.get(), target.isOpened(), declined);
                }
            });
        }).schedule();
    }

    private static Optional<Path> path(String typed) {
        try {
            return Optional.of(Path.of(typed.strip())).filter(CustomerSheets::isWritten).map(Path::toAbsolutePath);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Returns what went wrong. */
    private Optional<String> write(SheetWork.Made made, Path file, boolean mayReplace) {
        var how = mayReplace ? new OpenOption[0] : new OpenOption[] {StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE};
        try {
            Files.writeString(file, new CustomerSheets(basis.opened().library()).written(made.page(), made.photo(), file), how);
            return Optional.empty();
        } catch (FileAlreadyExistsException e) {
            return Optional.of(NLS.bind(Messages.sheetIsThere, file));
        } catch (NoSuchFileException e) {
            return Optional.of(NLS.bind(Messages.noFolder, file.getParent()));
        } catch (IOException e) {
            Failures.log(Messages.savingSheet, e);
            return Optional.of(NLS.bind(Messages.sheetNotSaved, file));
        }
    }

    private void written(Path file, boolean isOpened, Optional<List<String>> declined) {
        var saved = NLS.bind(!isOpened ? Messages.sheetSaved : Program.launch(file.toUri().toString()) ? Messages.sheetOpened
                : Messages.sheetLies, file);
        said.accept(saved + declined.flatMap(ids -> basis.job().map(job -> " " + offered(job, ids))).orElse(""));
    }

    /** Says what was written into the job. */
    private String offered(JobRecord job, List<String> declined) {
        var title = ElementTitle.of(job);
        try {
            var change = new OfferedWork(basis.opened().library()).write(job, basis.adding(), declined);
            change.ifPresent(it -> remember(it, title));
            return NLS.bind(change.isPresent() ? Messages.offersWritten : Messages.offersAdded, title);
        } catch (LibraryException | IllegalArgumentException e) {
            return e.getMessage();
        }
    }

    private void remember(QuickChange change, String title) {
        window.getService(LastChange.class).done(window, NLS.bind(Messages.offersWritten, title), () -> {
            change.takeBack();
            return NLS.bind(Messages.offersBack, title);
        });
    }
}
