// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.benchlore.diagnose.book.CaseInHand;
import org.benchlore.diagnose.book.CaseJob;
import org.benchlore.diagnose.book.CaseReader;
import org.benchlore.diagnose.book.Nearest;
import org.benchlore.diagnose.book.Chains;
import org.benchlore.diagnose.book.WorkDone;
import org.benchlore.diagnose.ladder.LadderBuilder;
import org.benchlore.store.Library;

/**
 * Answers what may be wrong with a machine, from a library as it is now. An answer to a check is a new question; each
 * is answered in a fraction of a second. Not safe for several threads: make one for each.
 */
public final class Diagnoses {

    /** More likely than not. */
    private static final double LIKELIER = 0.5;

    private final CaseReader reader;

    /**
     * Makes the service.
     *
     * @param library an open library
     */
    public Diagnoses(Library library) {
        this.reader = new CaseReader(library);
    }

    /**
     * Answers a question.
     *
     * @param question what somebody at the bench asks
     * @return the answer
     * @throws QuestionException if it names something the library does not hold; the message says what to do
     */
    public Assessment ask(Question question) throws QuestionException {
        var now = reader.read(question);
        var weighing = new Weighing(now);
        var ranking = new Ranking(now, weighing);
        var causes = ranking.causes();
        var unknown = now.findings().stream()
                .filter(finding -> ranking.tied().stream().noneMatch(one -> one.link(finding) > 0)).toList();
        return new Assessment(now.about(), now.findings(), unknown,
                unknown.stream().flatMap(finding -> new Nearest(now).to(finding).stream()).toList(), causes, ranking.others(), ranking.elsewhere(),
                new Together(now, ranking).causes(), new RuledOuts(now).all(), chain(now),
                new CheckPlanning(now, weighing, ranking).checks(),
                now.work().map(work -> new LadderBuilder(now, work, causes).build()), path(now, causes),
                remarks(now, weighing));
    }

    private static Optional<FunctionChain> chain(CaseInHand now) {
        var jobs = now.file().jobs().stream().filter(job -> job.day().isPresent()
                && now.unit().filter(job.day().get().unit()::equals).isPresent()
                && now.job().filter(job.address()::equals).isEmpty())
                .sorted(Comparator.comparing((CaseJob job) -> job.day().get().date())).toList();
        return now.failing().map(function -> new Chains(now.book(), now.words()).chain(function, now.work(), jobs));
    }

    private static Path path(CaseInHand now, List<RankedCause> causes) {
        var steps = now.answered().stream().map(one -> new Path.Step(one.probe().procedure(), one.shown(), one.recorded()))
                .toList();
        var leading = causes.stream().findFirst();
        return new Path(now.findings().stream().filter(finding -> !finding.isCode()).map(Finding::text).toList(),
                now.findings().stream().flatMap(finding -> finding.code().stream()).toList(),
                now.findings().stream().filter(finding -> finding.isCode() && finding.code().isEmpty()).map(Finding::text)
                        .toList(), now.about().address(),
                now.work().map(work -> work.work().address()), now.job(), steps,
                leading.map(cause -> new Named(cause.address(), cause.title())),
                leading.map(cause -> cause.component().address()),
                leading.filter(cause -> cause.chance() >= LIKELIER && now.answered().stream()
                        .anyMatch(one -> one.outcome().points().contains(cause.address()))).isPresent());
    }

    private static List<String> remarks(CaseInHand now, Weighing weighing) {
        var remarks = new ArrayList<String>();
        if (!weighing.isAllWeighed()) {
            remarks.add("More was found than can be weighed at once: the last symptoms were left out.");
        }
        now.file().documents().stream().filter(document -> !document.fits() && now.findings().stream()
                .anyMatch(finding -> finding.code().filter(document.codes()::contains).isPresent()))
                .forEach(document -> remarks.add("'" + document.title()
                        + "' speaks of this, but not for the serial number of this unit."));
        now.work().filter(work -> now.unit().isPresent() && work.job().isEmpty()).map(WorkDone::work)
                .ifPresent(work -> remarks.add("No job record of this unit holds '" + work.title()
                        + "': what was renewed and disturbed is read from the procedure."));
        remarks.addAll(now.openings().lacks());
        return List.copyOf(remarks);
    }
}
