// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.review.ReviewAction;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Reviews, withdraws or compares what is in front, as the word behind its name in plugin.xml says. */
public final class ReviewHandler extends AbstractHandler implements IExecutableExtension {

    private ReviewAction.Task task = ReviewAction.Task.REVIEW;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        task = ReviewAction.Task.valueOf(String.valueOf(data));
    }

    @Override
    public Object execute(ExecutionEvent event) {
        new ReviewAction(HandlerUtil.getActiveWorkbenchWindow(event)).run(task);
        return null;
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(LibrarySession.class).current().isPresent());
    }
}
