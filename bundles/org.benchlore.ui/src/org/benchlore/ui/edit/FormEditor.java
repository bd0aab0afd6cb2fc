// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.Failures;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.edit.form.ClipKeys;
import org.benchlore.ui.edit.form.FormScope;
import org.benchlore.ui.edit.form.Required;
import org.benchlore.ui.edit.form.Unread;
import org.benchlore.ui.look.Icons;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.EditorPart;

/**
 * Edits one element in a form. What cannot be understood or may not be empty keeps it from being saved. A file that
 * cannot be saved over is shown for reading, with the reason.
 */
public final class FormEditor extends EditorPart {

    private Optional<EditSession> session = Optional.empty();
    private Optional<String> readOnly = Optional.empty();
    private final Unread unread = new Unread(this::changed);
    private TopElement element;
    private FormScope scope;
    private ClipKeys clips;
    private FormHead head;
    private EditorBody body;
    private WindowThread thread;
    private boolean isChangedOutside;
    private boolean isRefreshing;
    private boolean isSaving;
    private Runnable unlisten = () -> { };

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        if (!(input instanceof EditInput)) {
            throw new PartInitException(Messages.notAnElement);
        }
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    private EditInput input() {
        return (EditInput) getEditorInput();
    }

    @Override
    public void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        thread = new WindowThread(parent);
        var target = EditTarget.find(getSite(), input());
        session = target.session();
        readOnly = target.reason();
        if (target.element().isEmpty()) {
            showReason(parent);
            return;
        }
        element = target.element().get();
        var library = getSite().getService(LibrarySession.class);
        clips = new ClipKeys(getSite().getService(IHandlerService.class), getSite().getService(Editing.class).clips(),
                getEditorSite().getActionBars().getStatusLineManager()::setErrorMessage);
        scope = new FormScope(getSite().getService(Editing.class).sessions().orElseThrow(), element, session, unread,
                new PageOpener(getSite().getPage(), library)::open, new EditOpener(getSite().getPage())::make, clips);
        if (element.isInvented()) {
            InventedBand.create(parent);
        }
        head = new FormHead(parent, this::goToProblem);
        body = EditorBody.create(parent, element, session, this, clips, scope, unread);
        Kind.of(element.eClass()).ifPresent(kind -> setTitleImage(new Icons(parent).of(kind)));
        EditHandlers.install(getEditorSite(), session, unread, this::refreshNow);
        var stopSession = session.map(open -> open.onEvent(event -> thread.run(() -> happened(event))));
        var stopLibrary = library.onChange(event -> {
            scope.forgetOthers();
            thread.run(body::libraryChanged);
        });
        unlisten = () -> {
            stopSession.ifPresent(Runnable::run);
            stopLibrary.run();
        };
        showHead();
    }

    private void showReason(Composite parent) {
        var label = new Label(parent, SWT.WRAP);
        label.setText(readOnly.orElse("").replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, true).indent(10, 10).applyTo(label);
    }

    /**
     * Returns what is edited.
     *
     * @return the working copy, or the element as it lies on the disk; empty if nothing can be read
     */
    public Optional<TopElement> element() {
        return Optional.ofNullable(element);
    }

    private void happened(EditSession.Event event) {
        switch (event) {
            case EDITED -> refreshNow();
            case SAVED -> isChangedOutside = false;
            case OUTSIDE -> changedOutside();
            case CLOSED -> getSite().getPage().closeEditor(this, false);
        }
        changed();
    }

    /** Somebody who has written nothing sees what is on the disk now; others are asked when they save. */
    private void changedOutside() {
        isChangedOutside = true;
        if (!isDirty()) {
            try {
                session.orElseThrow().revert();
                isChangedOutside = false;
            } catch (LibraryException e) {
                Failures.log(e.getMessage(), e);
            }
        }
    }

    private void changed() {
        if (head != null && !isRefreshing) {
            isRefreshing = true;
            thread.run(() -> {
                isRefreshing = false;
                showHead();
                firePropertyChange(PROP_DIRTY);
            });
        }
    }

    private void refreshNow() {
        body.refresh();
        setPartName(ElementTitle.of(element));
    }

    private int problems() {
        return session.isEmpty() ? 0 : unread.all().size() + Required.missing(element).size();
    }

    /**
     * Selects an inner element in the outline, or the nearest one around it that stands there.
     *
     * @param inner an element of the working copy
     */
    public void reveal(EObject inner) {
        refreshNow();
        body.reveal(inner);
    }

    private void showHead() {
        int count = problems();
        if (readOnly.isPresent()) {
            head.show("info", NLS.bind(Messages.readOnly, readOnly.get()), false);
        } else if (count > 0) {
            head.show("error", count == 1 ? Messages.oneProblem : NLS.bind(Messages.problems, count), true);
        } else if (isChangedOutside) {
            head.show("warning", Messages.changedOutside, false);
        } else {
            var draftProblem = getSite().getService(Editing.class).problem();
            head.show(draftProblem.isPresent() ? "warning" : "info", draftProblem.orElseGet(() -> NLS.bind(
                    session.orElseThrow().base().isEmpty() ? Messages.newFile : Messages.file, input().path())), false);
        }
    }

    private void goToProblem() {
        var place = unread.all().keySet().stream().findFirst()
                .or(() -> Required.missing(element).keySet().stream().findFirst());
        place.ifPresent(body::goTo);
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        body.commit();
        if (session.isEmpty() || problems() > 0) {
            goToProblem();
            monitor.setCanceled(true);
        } else if (isSaving || !saved(monitor)) {
            monitor.setCanceled(true);
        }
        changed();
    }

    /** Another save can be asked for while the file is being written. */
    private boolean saved(IProgressMonitor monitor) {
        isSaving = true;
        try {
            new SavingFirst(getEditorSite()).save(session.get(), monitor);
            return new Saving(getSite().getShell(), session.get()).save(monitor);
        } finally {
            isSaving = false;
        }
    }

    @Override
    public boolean isDirty() {
        return session.filter(open -> !open.isClosed()).map(open -> open.isDirty() || !unread.isEmpty()).orElse(false);
    }

    @Override
    public void setFocus() {
        if (body != null) {
            body.focus();
        }
    }

    @Override
    public void dispose() {
        unlisten.run();
        session.ifPresent(EditSession::close);
        super.dispose();
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void doSaveAs() {
        // The path of a file follows from its id.
    }
}
