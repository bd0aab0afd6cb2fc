// SPDX-License-Identifier: EPL-2.0
package org.benchlore.app;

import java.io.IOException;
import java.nio.file.Files;

import org.benchlore.workshop.Places;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** The window program. An argument that is no option names the folder of the library to open. */
public final class Application implements IApplication {

    @Override
    public Object start(IApplicationContext context) throws IOException {
        var arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        Display.setAppName(Messages.product);
        var display = PlatformUI.createDisplay();
        try {
            if (!holdsOwnFolder(Platform.getInstanceLocation())) {
                MessageDialog.openInformation(null, Messages.product, Messages.alreadyRunning);
                return EXIT_OK;
            }
            var advisor = new ApplicationWorkbenchAdvisor(Arguments.libraryFolder(arguments));
            int code = PlatformUI.createAndRunWorkbench(display, advisor);
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    /** Two windows that share a folder would write over each other's state, so the second one does not start. */
    private static boolean holdsOwnFolder(Location own) throws IOException {
        if (!own.isSet()) {
            var folder = Files.createDirectories(Places.ofUser().state().resolve("window"));
            own.set(folder.toUri().toURL(), false);
        }
        return own.lock();
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            var workbench = PlatformUI.getWorkbench();
            workbench.getDisplay().syncExec(workbench::close);
        }
    }
}
