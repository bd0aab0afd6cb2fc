// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.desk.Offers;
import org.benchlore.edit.desk.QuickChange;
import org.benchlore.measure.Amount;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Procedure;
import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Proposal;
import org.benchlore.store.LibraryException;

/** Writes into a job's record what its customer's sheet offers, and takes that back. */
public final class OfferedWork {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final OpenLibrary opened;

    /**
     * Makes it.
     *
     * @param opened the library
     */
    public OfferedWork(OpenLibrary opened) {
        this.opened = opened;
    }

    /**
     * Lists what is offered, at its extra without tax as a job holds prices.
     *
     * @param adding the plan with what could be added
     * @param declined ids of what was declined
     * @return a line each
     */
    public List<Offers.Line> lines(Adding adding, List<String> declined) {
        return adding.proposals().stream().map(one -> line(adding, one, declined.contains(one.id()))).toList();
    }

    private Offers.Line line(Adding adding, Proposal one, boolean isDeclined) {
        var procedure = opened.library().top(one.id()).filter(Procedure.class::isInstance).flatMap(opened.library()::addressOf);
        var tax = adding.plan().flatMap(plan -> plan.price().taxPercent()).orElse(BigDecimal.ZERO);
        var net = one.assumptions().customer().extra().multiply(HUNDRED).divide(HUNDRED.add(tax), 2, RoundingMode.HALF_UP);
        return new Offers.Line(procedure, one.title(), Amount.parse(net.toPlainString()), isDeclined);
    }

    /**
     * Writes it down. Where the job is being edited it is added there, to be saved and undone with the rest.
     *
     * @param job the job
     * @param adding the plan with what could be added
     * @param declined ids of what was declined
     * @return what can be taken back; empty if the job is being edited
     * @throws LibraryException if it cannot be edited or was not saved, in one sentence
     */
    public Optional<QuickChange> write(JobRecord job, Adding adding, List<String> declined) throws LibraryException {
        var path = opened.library().addressOf(job).orElseThrow().path();
        return QuickChange.make(opened.sessions(), path, session -> Offers.edit(session, lines(adding, declined),
                adding.request().today()));
    }
}
