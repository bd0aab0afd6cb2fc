// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.welcome;

import org.benchlore.ui.commands.LibraryDialogs;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.part.EditorPart;

/** The welcome page. */
public final class WelcomeEditor extends EditorPart {

    private WelcomePage page;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(Messages.name);
    }

    @Override
    public void createPartControl(Composite parent) {
        var session = getSite().getService(LibrarySession.class);
        var scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        page = new WelcomePage(scrolled, session, new LibraryDialogs(getSite().getShell(), session));
        scrolled.setContent(page.control());
        scrolled.addListener(SWT.Resize, event -> scrolled.setMinSize(
                page.control().computeSize(scrolled.getClientArea().width, SWT.DEFAULT)));
    }

    @Override
    public void setFocus() {
        page.setFocus();
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // Nothing can be changed here.
    }

    @Override
    public void doSaveAs() {
        // Nothing can be changed here.
    }
}
