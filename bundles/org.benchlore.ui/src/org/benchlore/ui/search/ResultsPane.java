// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.search.Hit;
import org.benchlore.search.Results;
import org.benchlore.ui.Keys;
import org.benchlore.ui.WindowThread;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The hits, and beside them a preview of the one that is selected. */
final class ResultsPane {

    private static final int[] WEIGHTS = {62, 38};

    private final SashForm sash;
    private final HitTable hits;
    private final Preview preview;
    private final SeenPassages passages;
    private Question question;

    /** Makes it; {@code leave} is run when Escape leaves the list. */
    ResultsPane(Composite parent, Consumer<Address> opener, Runnable leave) {
        sash = new SashForm(parent, SWT.HORIZONTAL);
        var frame = new Composite(sash, SWT.NONE);
        passages = new SeenPassages(new WindowThread(sash), () -> hits().control().redraw());
        hits = new HitTable(frame, passages::of);
        preview = new Preview(sash, opener, () -> hits().focus());
        sash.setWeights(WEIGHTS);
        hits.onOpen(opener);
        hits.onSelect(this::preview);
        Keys.on(hits.control(), SWT.ESC, leave);
    }

    Control control() {
        return sash;
    }

    HitTable hits() {
        return hits;
    }

    void show(Question next, Results results) {
        var changed = !next.hasTextOf(question);
        question = next;
        passages.of(next);
        hits.show(results.hits(), next.catalogue());
        if (changed) {
            preview(hits.selected());
        }
    }

    private void preview(Optional<Hit> hit) {
        hit.ifPresentOrElse(found -> preview.show(question, found), preview::clear);
    }

    void forget() {
        question = null;
        passages.forget();
        preview.forget();
    }
}
