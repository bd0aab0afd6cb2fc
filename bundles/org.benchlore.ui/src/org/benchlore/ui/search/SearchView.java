// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.search.Query;
import org.benchlore.search.Results;
import org.benchlore.ui.Keys;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.commands.LibraryDialogs;
import org.benchlore.ui.note.NoteDialog;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.SessionEvent;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** Finds everything from one field, while it is typed. */
public final class SearchView extends ViewPart {

    private static final int MOST_HITS = 100;

    private LibrarySession session;
    private Asker asker;
    private SearchBar bar;
    private MeantLine meant;
    private SearchBody body;
    private Guidance guidance;
    private Runnable unlisten = () -> { };
    private boolean answered;
    private boolean openWhenAnswered;

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        GridLayoutFactory.fillDefaults().margins(4, 4).spacing(0, 4).applyTo(parent);
        asker = new Asker(new WindowThread(parent), this::show);
        bar = new SearchBar(parent, () -> ask(true), () -> ask(false));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar.control());
        meant = new MeantLine(parent, text -> bar.type(text));
        body = new SearchBody(parent, this::open, () -> bar.focusField());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body.control());
        HitMenu.addTo(body.results().hits(), this::open, getSite());
        guidance = new Guidance(body.guide(), doing());
        bar.field().addListener(SWT.DefaultSelection, event -> openFirst());
        Keys.on(bar.field(), SWT.ARROW_DOWN, body::focus);
        unlisten = session.onChange(this::libraryChanged);
        begin();
    }

    private Guidance.Doing doing() {
        var dialogs = new LibraryDialogs(getSite().getShell(), session);
        return new Guidance.Doing(bar::type, bar.filters()::removeAll, this::writeNote, session::openDemonstration,
                dialogs::open);
    }

    private void writeNote(String text) {
        NoteDialog.begin(getSite().getWorkbenchWindow(), text);
    }

    private void open(Address address) {
        new PageOpener(getSite().getPage(), session).open(address);
    }

    private void libraryChanged(SessionEvent event) {
        if (!bar.control().isDisposed()) {
            if (!(event instanceof SessionEvent.LibraryChanged)) {
                bar.filters().reset();
            }
            begin();
        }
    }

    private void begin() {
        bar.field().setEnabled(session.current().isPresent());
        ask(false);
    }

    private void ask(boolean typing) {
        openWhenAnswered = false;
        answered = false;
        if (session.current().isEmpty() || bar.field().getText().isBlank()) {
            clear();
            return;
        }
        bar.filters().setStale(true);
        var query = new Query(bar.field().getText(), bar.filters().chosenValues(), MOST_HITS, false);
        var question = new Question(session.current().orElseThrow(), query);
        if (typing) {
            asker.askWhileTyping(question);
        } else {
            asker.askNow(question);
        }
    }

    private void clear() {
        asker.forget();
        body.results().forget();
        bar.showNoCount();
        bar.filters().clear();
        meant.show(Optional.empty());
        body.showGuide();
        session.current().ifPresentOrElse(guidance::nothingTyped, guidance::noLibrary);
    }

    private void show(Question question, Results results) {
        answered = true;
        bar.showCount(results);
        meant.show(results.meant());
        if (question.query().counted()) {
            bar.filters().show(results.counts(), question.catalogue());
        }
        showHits(question, results);
        if (openWhenAnswered) {
            openFirst();
        }
    }

    private void showHits(Question question, Results results) {
        if (results.hits().isEmpty()) {
            body.showGuide();
            guidance.nothingFound(question);
        } else {
            guidance.forget();
            body.results().show(question, results);
            body.showResults();
        }
    }

    /** Enter in the field opens the first hit, and waits for the answer where one is still to come. */
    private void openFirst() {
        openWhenAnswered = !answered && !bar.field().getText().isBlank();
        if (answered) {
            body.focus();
            if (body.showsResults()) {
                body.results().hits().selected().ifPresent(hit -> open(hit.row().address()));
            }
        }
    }

    /** Goes back to where a page was opened from: the list if there is one, else the field. */
    public void returnTo() {
        if (body.showsResults()) {
            bar.field().clearSelection();
            body.focus();
        } else {
            bar.focusField();
        }
    }

    /**
     * Returns what stands in the field.
     *
     * @return the text, perhaps empty
     */
    public String typed() {
        return bar.field().getText();
    }

    /** The hit in the list is selected only while somebody is in the list or its preview. */
    @Override
    public <T> T getAdapter(Class<T> adapter) {
        if (adapter == Address.class) {
            return adapter.cast(body != null && body.showsResults() && !bar.field().isFocusControl()
                    ? body.results().hits().selected().map(hit -> hit.row().address()).orElse(null) : null);
        }
        return super.getAdapter(adapter);
    }

    /** Puts the cursor into the field, with what is in it selected. */
    @Override
    public void setFocus() {
        bar.field().setFocus();
        bar.field().selectAll();
    }

    @Override
    public void dispose() {
        unlisten.run();
        if (asker != null) {
            asker.forget();
            body.results().forget();
            guidance.forget();
        }
        super.dispose();
    }
}
