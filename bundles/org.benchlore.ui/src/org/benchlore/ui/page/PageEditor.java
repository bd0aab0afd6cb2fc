// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.edit.EditOpener;
import org.benchlore.ui.look.Icons;
import org.benchlore.ui.note.NoteMenu;
import org.benchlore.ui.plan.PlanMenu;
import org.benchlore.ui.review.ReviewMenu;
import org.benchlore.ui.search.SearchView;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.SessionMemory;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.EditorPart;

/** The reading page of one element. It follows changes of the library and goes on showing a message if it is gone. */
public final class PageEditor extends EditorPart {

    private LibrarySession session;
    private PageCanvas canvas;
    private FindBar findBar;
    private Icons icons;
    private PageJob job;
    private Runnable unlisten = () -> { };
    private Runnable unlistenZoom = () -> { };

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        if (!(input instanceof ElementInput)) {
            throw new PartInitException(Messages.notAnElement);
        }
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        var memory = getSite().getService(SessionMemory.class);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        canvas = new PageCanvas(parent, "page.text", memory.zoom(),
                new PageOpener(getSite().getPage(), session)::open);
        Keys.on(canvas.control(), SWT.ESC, this::goToSearch);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas.control());
        findBar = new FindBar(parent, canvas.control());
        icons = new Icons(parent);
        provideFind();
        provideMenu();
        var thread = new WindowThread(canvas.control());
        job = new PageJob(made -> thread.run(() -> show(made)));
        unlisten = session.onChange(event -> ask(""));
        unlistenZoom = memory.onZoom(percent -> canvas.zoom(percent));
        ask("");
    }

    /** Goes back to the list that the page was probably opened from. */
    private void goToSearch() {
        if (getSite().getPage().findView(Ids.SEARCH_VIEW) instanceof SearchView search) {
            getSite().getPage().activate(search);
            search.returnTo();
        }
    }

    private void provideFind() {
        getSite().getService(IHandlerService.class).activateHandler(IWorkbenchCommandConstants.EDIT_FIND_AND_REPLACE,
                new AbstractHandler() {
                    @Override
                    public Object execute(ExecutionEvent event) {
                        findBar.open();
                        return null;
                    }
                });
    }

    private void provideMenu() {
        var menu = new Menu(canvas.control());
        var edit = new MenuItem(menu, SWT.PUSH);
        edit.setText(Messages.edit);
        edit.addListener(SWT.Selection, event -> new EditOpener(getSite().getPage())
                .edit(((ElementInput) getEditorInput()).address()));
        if (((ElementInput) getEditorInput()).address().path().startsWith("notes/")) {
            NoteMenu.addTo(menu, getSite());
        }
        PlanMenu.addTo(menu, getSite(), () -> Optional.of(((ElementInput) getEditorInput()).address()));
        ReviewMenu.addTo(menu, getSite(), () -> Optional.of(((ElementInput) getEditorInput()).address()));
        canvas.control().setMenu(menu);
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == Address.class ? adapter.cast(((ElementInput) getEditorInput()).address())
                : super.getAdapter(adapter);
    }

    /**
     * Scrolls to an inner element.
     *
     * @param inner an element of the same file
     */
    public void reveal(Address inner) {
        ask(inner.id());
    }

    /**
     * Returns the widget that shows the page.
     *
     * @return a read-only text
     */
    public StyledText text() {
        return canvas.control();
    }

    private void ask(String inner) {
        job.show(new PageJob.Wish(session.current(), (ElementInput) getEditorInput(), inner));
    }

    private void show(PageJob.Made made) {
        setPartName(made.title());
        made.kind().ifPresent(kind -> setTitleImage(icons.of(kind)));
        canvas.show(made.page(), made.pictures());
        if (!made.reveal().isEmpty()) {
            canvas.reveal(made.reveal());
        }
        findBar.refresh();
    }

    @Override
    public void setFocus() {
        getSite().getService(PageHistory.class).visit(((ElementInput) getEditorInput()).address());
        canvas.control().setFocus();
    }

    @Override
    public void dispose() {
        unlisten.run();
        unlistenZoom.run();
        if (job != null) {
            job.cancel();
        }
        super.dispose();
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
        // A reading page has nothing to save.
    }

    @Override
    public void doSaveAs() {
        // A reading page has nothing to save.
    }
}
