// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.page.Page;
import org.benchlore.search.Hit;
import org.benchlore.ui.Keys;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.page.PageCanvas;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** What a hit is, why it is one, and what belongs to it; made away from the window's thread. */
final class Preview {

    private static final int PAUSE = 60;
    private static final int MOST_RELATED = 6;
    private static final int SIZE = 94;

    private final PageCanvas canvas;
    private final LatestJob<Wish, Page> job;

    private record Wish(Question question, Hit hit) {
    }

    Preview(Composite parent, Consumer<Address> opener, Runnable leave) {
        canvas = new PageCanvas(parent, "search.preview", SIZE, opener);
        Keys.name(canvas.control(), Messages.previewName);
        Keys.on(canvas.control(), SWT.ESC, leave);
        job = new LatestJob<>(Messages.searching, Preview::make, new WindowThread(canvas.control()),
                (wish, page) -> canvas.show(page, Map.of()));
    }

    Control control() {
        return canvas.control();
    }

    void show(Question question, Hit hit) {
        job.ask(new Wish(question, hit), PAUSE);
    }

    void clear() {
        job.forget();
        canvas.show(new Page("", List.of()), Map.of());
    }

    void forget() {
        job.forget();
    }

    private static Page make(Wish wish) {
        var row = wish.hit().row();
        var search = wish.question().library().library().search();
        var passage = search.passages(wish.question().query(), List.of(row)).get(0);
        return new PreviewPage(row, passage, search.related(row, MOST_RELATED), wish.question().catalogue()).page();
    }
}
