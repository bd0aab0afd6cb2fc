// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.ladder;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.diagnose.Named;
import org.benchlore.diagnose.RankedCause;
import org.benchlore.diagnose.book.CaseInHand;
import org.benchlore.diagnose.book.MachineBook;
import org.benchlore.diagnose.book.WorkDone;
import org.benchlore.model.Component;
import org.benchlore.store.ElementTitle;

/** Builds the ladder from the job's own record, as far as there is one, and from the procedure. */
public final class LadderBuilder {

    private static final int MOST_KILLED = 3;

    private final CaseInHand now;
    private final WorkDone work;
    private final List<RankedCause> causes;

    /**
     * Makes a builder.
     *
     * @param now the case
     * @param work the work that did not cure
     * @param causes the causes as they are ranked now
     */
    public LadderBuilder(CaseInHand now, WorkDone work, List<RankedCause> causes) {
        this.now = now;
        this.work = work;
        this.causes = causes;
    }

    /**
     * Builds the ladder.
     *
     * @return five rungs
     */
    public Ladder build() {
        var teachIn = new TeachInRungs(now, work);
        var parts = new PartRungs(now, work, causes);
        var job = work.job().flatMap(record -> now.book().library().addressOf(record)
                .map(address -> new Named(address, ElementTitle.of(record)
                        + (record.getOpened() == null ? "" : ", " + record.getOpened()))));
        return new Ladder(work.work(), job, List.of(new Rung(Rung.Kind.CONDITIONS, teachIn.conditions()),
                new Rung(Rung.Kind.DISTURBED, teachIn.disturbed()), new Rung(Rung.Kind.OLD_PARTS, parts.oldParts()),
                new Rung(Rung.Kind.NEW_PARTS, parts.newParts()), new Rung(Rung.Kind.SOFTWARE, teachIn.software())), killed());
    }

    /** Of what was renewed and of the causes that lead: what brings them about, and what they may have spoiled. */
    private List<String> killed() {
        var lines = new ArrayList<String>();
        now.book().causes().forEach((address, cause) -> {
            if (work.renewed().contains(now.book().upwards((Component) cause.eContainer()).get(0))) {
                cause.getCausedBy().forEach(by -> now.book().named(by).ifPresent(named -> lines.add(
                        MachineBook.title(cause) + " may come from: " + named.title() + ". If the old part looked like that, "
                                + "the new one goes the same way.")));
            }
        });
        causes.stream().limit(MOST_KILLED).forEach(cause -> {
            cause.broughtAboutBy().forEach(by -> lines.add(cause.title() + " may come from: " + by.title() + "."));
            cause.spoils().forEach(other -> lines.add(cause.title() + " may have spoiled: " + other.title() + "."));
        });
        return lines.stream().distinct().toList();
    }
}
