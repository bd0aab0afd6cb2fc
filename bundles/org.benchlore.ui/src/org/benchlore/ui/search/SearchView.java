// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.Optional;

import org.benchlore.search.Query;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** Finds everything from one field, while it is typed. */
public final class SearchView extends ViewPart {

    private static final int TYPING_PAUSE = 120;
    private static final int MOST_HITS = 200;
    private static final int PREVIEW_HEIGHT = 38;

    private LibrarySession session;
    private SearchJob job;
    private Text field;
    private Scope scope;
    private Label count;
    private HitTable hits;
    private Preview preview;
    private Runnable unlisten = () -> { };
    private String answered = "";
    private boolean openWhenAnswered;

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        var thread = new WindowThread(parent);
        job = new SearchJob(answer -> thread.run(() -> show(answer)));
        GridLayoutFactory.fillDefaults().margins(4, 4).spacing(0, 4).applyTo(parent);
        createField(parent);
        createHits(parent);
        preview = new Preview(parent);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, PREVIEW_HEIGHT).applyTo(preview.control());
        unlisten = session.onChange(event -> libraryChanged());
        libraryChanged();
    }

    private void createField(Composite parent) {
        var line = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(6, 0).applyTo(line);
        field = new Text(line, SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH);
        field.setMessage(Messages.fieldHint);
        field.setData(Ids.WIDGET_ID, "search.field");
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(field);
        field.addModifyListener(event -> ask(TYPING_PAUSE));
        field.addListener(SWT.DefaultSelection, event -> openFirst());
        Keys.on(field, SWT.ARROW_DOWN, this::goToHits);
        Keys.on(field, SWT.ESC, () -> field.setText(""));
        scope = new Scope(line, () -> ask(0));
        count = new Label(line, SWT.RIGHT);
        count.setData(Ids.WIDGET_ID, "search.count");
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(90, SWT.DEFAULT).applyTo(count);
    }

    private void createHits(Composite parent) {
        var frame = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        hits = new HitTable(frame);
        hits.control().setData(Ids.WIDGET_ID, "search.hits");
        Keys.name(hits.control(), Messages.hitsName);
        hits.onOpen(new PageOpener(getSite().getPage(), session)::open);
        hits.onSelect(preview -> this.preview.show(preview));
        Keys.on(hits.control(), SWT.ESC, () -> field.setFocus());
    }

    private void goToHits() {
        hits.focusFirst();
        preview.show(hits.selected());
    }

    /** Enter in the field opens the first hit, and waits for the answer where one is still to come. */
    private void openFirst() {
        if (!field.getText().equals(answered)) {
            openWhenAnswered = true;
        } else if (hits.control().getItemCount() > 0) {
            goToHits();
            hits.selected().ifPresent(hit -> new PageOpener(getSite().getPage(), session).open(hit.row().address()));
        }
    }

    private void libraryChanged() {
        if (!field.isDisposed()) {
            scope.offer(session.current());
            field.setEnabled(session.current().isPresent());
            ask(0);
        }
    }

    private void ask(long delay) {
        openWhenAnswered = false;
        answered = "";
        if (session.current().isEmpty() || field.getText().isBlank()) {
            job.forget();
            clear();
        } else {
            var query = new Query(field.getText(), scope.kind(), scope.machine(), MOST_HITS);
            job.ask(new SearchJob.Question(session.current().get(), query), delay);
        }
    }

    private void clear() {
        hits.control().removeAll();
        count.setText("");
        preview.say(session.current().isEmpty() ? Messages.noLibrary : Messages.howToSearch);
    }

    private void show(SearchJob.Answer answer) {
        if (!answer.question().query().text().equals(field.getText())) {
            return;
        }
        var results = answer.results();
        hits.show(results.hits(), answer.question().library().library().library().catalogue());
        count.setText(NLS.bind(Messages.foundCount, results.total()));
        if (results.hits().isEmpty()) {
            preview.say(nothingFound(answer.question().query()));
        } else if (results.loosened()) {
            preview.say(Messages.onlySomeWords);
        } else {
            preview.show(Optional.of(results.hits().get(0)));
        }
        answered = field.getText();
        if (openWhenAnswered) {
            openWhenAnswered = false;
            openFirst();
        }
    }

    private static String nothingFound(Query query) {
        var narrowed = query.kind().isPresent() || query.machine().isPresent();
        return NLS.bind(narrowed ? Messages.nothingFoundHere : Messages.nothingFound, query.text().strip());
    }

    /** Puts the cursor into the field, with what is in it selected. */
    @Override
    public void setFocus() {
        field.setFocus();
        field.selectAll();
    }

    @Override
    public void dispose() {
        unlisten.run();
        if (job != null) {
            job.forget();
        }
        super.dispose();
    }
}
