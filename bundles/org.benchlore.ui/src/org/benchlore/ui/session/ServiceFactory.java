// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import org.benchlore.ui.Ids;
import org.benchlore.ui.edit.Editing;
import org.benchlore.ui.log.LogBuffer;
import org.benchlore.ui.look.Appearance;
import org.benchlore.ui.page.PageHistory;
import org.benchlore.ui.status.LastChange;
import org.benchlore.workshop.Places;
import org.benchlore.workshop.Workshop;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.services.AbstractServiceFactory;
import org.eclipse.ui.services.IServiceLocator;

/** Makes the window's services, one of each for the whole workbench. */
public final class ServiceFactory extends AbstractServiceFactory {

    private static final int KEPT_LOG_RECORDS = 1000;

    @Override
    public Object create(Class type, IServiceLocator parent, IServiceLocator locator) {
        var shared = parent.getService(type);
        return shared == null ? make(type, locator) : shared;
    }

    private static Object make(Class<?> type, IServiceLocator locator) {
        if (type == Workshop.class) {
            return new Workshop(Places.ofUser());
        }
        if (type == LibrarySession.class) {
            return new LibrarySession(locator.getService(Workshop.class), Display.getDefault()::asyncExec,
                    locator.getService(SessionMemory.class));
        }
        if (type == SessionMemory.class) {
            return new SessionMemory(InstanceScope.INSTANCE.getNode(Ids.BUNDLE));
        }
        if (type == Appearance.class) {
            return new Appearance(locator.getService(IThemeEngine.class), locator.getService(SessionMemory.class));
        }
        if (type == Editing.class) {
            return new Editing(locator.getService(LibrarySession.class), Display.getDefault()::asyncExec);
        }
        if (type == Checking.class) {
            return new Checking(locator.getService(LibrarySession.class), Display.getDefault()::asyncExec);
        }
        if (type == PageHistory.class) {
            return new PageHistory();
        }
        if (type == LastChange.class) {
            return new LastChange();
        }
        return type == LogBuffer.class ? new LogBuffer(KEPT_LOG_RECORDS) : null;
    }
}
