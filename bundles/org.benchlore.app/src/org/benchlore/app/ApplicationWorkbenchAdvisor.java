// SPDX-License-Identifier: EPL-2.0
package org.benchlore.app;

import java.nio.file.Path;
import java.util.Optional;

import org.benchlore.ui.Ids;
import org.benchlore.ui.log.LogBuffer;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Sets the workbench up. */
final class ApplicationWorkbenchAdvisor extends WorkbenchAdvisor {

    private final Optional<Path> library;

    /** Makes the advisor; a library that was named when the program was started is opened first. */
    ApplicationWorkbenchAdvisor(Optional<Path> library) {
        this.library = library;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
        configurer.getWorkbench().getService(LogBuffer.class).listen();
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new ApplicationWindowAdvisor(configurer, library);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return Ids.PERSPECTIVE;
    }
}
