// SPDX-License-Identifier: EPL-2.0
package org.benchlore.app;

import java.nio.file.Path;
import java.util.Optional;

import org.benchlore.ui.edit.EditorRoom;
import org.benchlore.ui.look.Appearance;
import org.benchlore.ui.session.Checking;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.SessionMemory;
import org.benchlore.ui.status.StatusItems;
import org.benchlore.ui.status.WindowKeeper;
import org.benchlore.ui.welcome.Welcome;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Sets a window up and opens a library in it: the one that was named, else the one of last time. */
final class ApplicationWindowAdvisor extends WorkbenchWindowAdvisor {

    /** System property of the start script: open the demonstration library where no other is named or remembered. */
    private static final String DEMONSTRATION = "benchlore.demonstration";
    private static final Point USUAL_SIZE = new Point(1360, 920);

    private final Optional<Path> library;

    ApplicationWindowAdvisor(IWorkbenchWindowConfigurer configurer, Optional<Path> library) {
        super(configurer);
        this.library = library;
    }

    @Override
    public void preWindowOpen() {
        var configurer = getWindowConfigurer();
        configurer.setInitialSize(USUAL_SIZE);
        configurer.setShowCoolBar(false);
        configurer.setShowStatusLine(true);
        configurer.setShowProgressIndicator(true);
        configurer.setShowPerspectiveBar(false);
        configurer.setTitle(Messages.product);
    }

    @Override
    public void postWindowOpen() {
        var window = getWindowConfigurer().getWindow();
        var session = window.getService(LibrarySession.class);
        window.getService(Appearance.class).follow();
        new WindowKeeper(window, session).start();
        EditorRoom.watch(window.getActivePage());
        var line = getWindowConfigurer().getActionBarConfigurer().getStatusLineManager();
        new StatusItems(session, window.getService(Checking.class)).fill(line);
        line.update(true);
        window.getShell().getDisplay().asyncExec(() -> begin(window));
    }

    /** Waits until the window is there, so that what is opened gets the cursor. */
    private void begin(IWorkbenchWindow window) {
        library.or(window.getService(SessionMemory.class)::library).ifPresentOrElse(
                window.getService(LibrarySession.class)::open, () -> beginWithoutLibrary(window));
    }

    private static void beginWithoutLibrary(IWorkbenchWindow window) {
        if (Boolean.getBoolean(DEMONSTRATION)) {
            window.getService(LibrarySession.class).openDemonstration();
        } else {
            new Welcome(window).show();
        }
    }
}
