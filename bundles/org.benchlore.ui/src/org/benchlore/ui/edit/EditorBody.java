// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.model.JobRecord;
import org.benchlore.model.TopElement;
import org.benchlore.ui.edit.form.ClipKeys;
import org.benchlore.ui.edit.form.DetailArea;
import org.benchlore.ui.edit.form.FormPane;
import org.benchlore.ui.edit.form.FormScope;
import org.benchlore.ui.edit.form.Unread;
import org.benchlore.ui.jobs.card.JobPane;
import org.benchlore.ui.jobs.card.Tools;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.EditorPart;

/** What stands below the head of an editor: a form, one with an outline, or the card of a job. */
final class EditorBody {

    private static final int[] SHARES = {34, 66};

    private final DetailArea detail;
    private final Optional<OutlinePart> outline;
    private final Optional<JobPane> job;

    private EditorBody(DetailArea detail, Optional<OutlinePart> outline, Optional<JobPane> job) {
        this.detail = detail;
        this.outline = outline;
        this.job = job;
    }

    static EditorBody create(Composite parent, TopElement element, Optional<EditSession> session, EditorPart editor,
            ClipKeys clips, FormScope scope, Unread unread) {
        if (element instanceof JobRecord && session.isPresent()) {
            return job(parent, session.get(), editor, scope, unread);
        }
        return Outlines.has(element) ? outlined(parent, element, session, editor, clips, scope) : plain(parent, element, scope);
    }

    private static EditorBody job(Composite parent, EditSession session, EditorPart editor, FormScope scope, Unread unread) {
        var opened = editor.getSite().getService(LibrarySession.class).current().orElseThrow().library();
        var line = editor.getEditorSite().getActionBars().getStatusLineManager();
        var pane = new JobPane(parent, new Tools(editor.getSite(), opened, session, scope, unread, line::setMessage));
        FormKeys.install(pane.control(), pane.forms(), Optional.empty());
        return new EditorBody(pane.forms(), Optional.empty(), Optional.of(pane));
    }

    private static EditorBody outlined(Composite parent, TopElement element, Optional<EditSession> session, EditorPart editor,
            ClipKeys clips, FormScope scope) {
        var sash = new SashForm(parent, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        var late = new Runnable[] {() -> { }};
        var part = Outlines.create(sash, element, session, editor, clips, () -> late[0].run());
        var detail = new DetailArea(sash, scope);
        late[0] = () -> detail.pane().ifPresent(FormPane::focus);
        sash.setWeights(SHARES);
        part.outline().onSelect(detail::show);
        part.outline().select(element);
        part.outline().onEnter(late[0]);
        FormKeys.install(sash, detail, Optional.of(part));
        return new EditorBody(detail, Optional.of(part), Optional.empty());
    }

    private static EditorBody plain(Composite parent, TopElement element, FormScope scope) {
        var detail = new DetailArea(parent, scope);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(detail.control());
        detail.show(element);
        FormKeys.install(detail.control(), detail, Optional.empty());
        return new EditorBody(detail, Optional.empty(), Optional.empty());
    }

    /** Shows what the element holds now. */
    void refresh() {
        outline.ifPresent(part -> part.outline().refresh());
        job.ifPresentOrElse(JobPane::refresh, () -> detail.pane().ifPresent(FormPane::refresh));
    }

    /** Takes in what is typed and not in the element yet. */
    void commit() {
        job.ifPresent(JobPane::commit);
    }

    void libraryChanged() {
        job.ifPresent(JobPane::libraryChanged);
    }

    void reveal(EObject inner) {
        outline.ifPresent(part -> part.outline().selectNearest(inner));
        job.ifPresent(pane -> pane.reveal(inner));
    }

    void goTo(Unread.Place at) {
        if (job.isPresent()) {
            job.get().goTo(at);
            return;
        }
        outline.ifPresent(part -> part.outline().selectNearest(at.owner()));
        detail.pane().ifPresent(pane -> {
            pane.focus(at);
            pane.showProblems();
        });
    }

    void focus() {
        job.ifPresentOrElse(JobPane::focus, () -> detail.pane().ifPresent(FormPane::focus));
    }
}
