// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.status;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;

import org.benchlore.ui.Ids;
import org.benchlore.ui.edit.EditInput;
import org.benchlore.ui.edit.RecoveryDialog;
import org.benchlore.ui.page.ElementInput;
import org.benchlore.ui.page.PageHistory;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.session.SessionEvent;
import org.benchlore.ui.welcome.Welcome;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;

/**
 * Keeps a window in step with its library: its title, its open pages, the welcome page while no library is open, and
 * a look at the disk whenever somebody comes back to the window.
 */
public final class WindowKeeper {

    private final IWorkbenchWindow window;
    private final LibrarySession session;

    /**
     * Makes a keeper.
     *
     * @param window the window
     * @param session holds the library
     */
    public WindowKeeper(IWorkbenchWindow window, LibrarySession session) {
        this.window = window;
        this.session = session;
    }

    /** Begins to keep the window. */
    public void start() {
        var unlisten = session.onChange(this::changed);
        window.getShell().addListener(SWT.Activate, event -> session.refreshNowAndThen());
        window.getShell().addListener(SWT.Dispose, event -> unlisten.run());
        showTitle();
    }

    private void changed(SessionEvent event) {
        showTitle();
        if (event instanceof SessionEvent.LibraryOpened opened) {
            window.getService(PageHistory.class).clear();
            window.getService(LastChange.class).forget();
            var root = opened.now().library().library().root();
            close(reference -> reference.getId().equals(Ids.WELCOME_EDITOR) || isOfOther(reference, Optional.of(root)));
            goToSearch();
            RecoveryDialog.offer(window);
        } else if (event instanceof SessionEvent.LibraryClosed) {
            close(reference -> isOfOther(reference, Optional.empty()));
            new Welcome(window).show();
        }
    }

    /** Where no page is open, the field to type in is where the cursor belongs. */
    private void goToSearch() {
        var page = window.getActivePage();
        var search = page == null ? null : page.findView(Ids.SEARCH_VIEW);
        if (search != null && page.getActiveEditor() == null) {
            page.activate(search);
            search.setFocus();
        }
    }

    private void showTitle() {
        window.getShell().setText(session.current().map(WindowKeeper::title).orElse(Messages.product));
    }

    private static String title(Opened opened) {
        var library = opened.library();
        return NLS.bind(library.isInvented() ? Messages.windowTitleInvented : Messages.windowTitle, library.title(),
                Messages.product);
    }

    private void close(Predicate<IEditorReference> which) {
        var page = window.getActivePage();
        if (page != null) {
            var some = Arrays.stream(page.getEditorReferences()).filter(which).toArray(IEditorReference[]::new);
            page.closeEditors(some, false);
        }
    }

    private static boolean isOfOther(IEditorReference reference, Optional<Path> root) {
        try {
            var input = reference.getEditorInput();
            return input instanceof ElementInput page && !root.equals(Optional.of(page.library()))
                    || input instanceof EditInput edit && !root.equals(Optional.of(edit.library()));
        } catch (PartInitException e) {
            return true;
        }
    }
}
