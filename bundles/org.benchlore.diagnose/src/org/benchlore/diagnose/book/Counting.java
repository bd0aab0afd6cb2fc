// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.diagnose.Counted;
import org.benchlore.diagnose.book.CaseNote.Day;
import org.benchlore.diagnose.chance.Share;
import org.benchlore.model.Address;
import org.benchlore.model.Frequency;
import org.benchlore.model.WeightKind;

/**
 * How often a cause was met. Job records give the base: so many of all jobs. A note's count may only raise it, since
 * notes are written for what is odd. A job, its note and a sighting of it are one case. A case on another machine of the
 * family counts at the shop's weight for it. The author's own word is worth
 * a stated number of jobs.
 */
public final class Counting {

    private final CaseFile file;
    private final Weights weights;
    private final Set<Address> changing;
    private final Set<Address> work;
    private final Optional<Address> own;

    /**
     * One case, however many papers speak of it.
     */
    private record Case(Optional<Address> job, Optional<Day> day, double counts, double whole, boolean isOwn) {

        boolean isSameAs(Case other) {
            if (job.isPresent() && other.job.isPresent()) {
                return job.equals(other.job);
            }
            return day.isPresent() && other.day.filter(day.get()::isNear).isPresent();
        }

        Case joined(Case other) {
            return new Case(job.or(other::job), day.or(other::day), Math.max(counts, other.counts),
                    Math.max(whole, other.whole), isOwn || other.isOwn);
        }
    }

    /** Among how many: those on other machines of the family at their weight, and those on this machine alone. */
    private record Base(double weighed, int own) {

        Base or(Base other) {
            return new Base(Math.max(weighed, other.weighed), Math.max(own, other.own));
        }
    }

    /**
     * Makes a count.
     *
     * @param file the machine's papers
     * @param weights what each counts for
     * @param changing procedures that renew or overhaul: what was seen during them counts in part for other cases
     * @param work the work that was done now, for which such cases count in full
     * @param own the job in hand, which is no evidence for itself
     */
    public Counting(CaseFile file, Weights weights, Set<Address> changing, Set<Address> work, Optional<Address> own) {
        this.file = file;
        this.weights = weights;
        this.changing = changing;
        this.work = work;
        this.own = own;
    }

    /**
     * Counts a candidate.
     *
     * @param candidate a candidate
     * @return its count and how likely that makes it
     */
    public Counted of(Candidate candidate) {
        var frequency = candidate.cause().map(cause -> cause.getFrequency()).orElse(Frequency.NOT_RECORDED);
        var figure = weights.of(frequency);
        var notes = file.notes().stream().filter(note -> note.supports()
                && Links.isAbout(candidate, note.cause(), note.component())).toList();
        var jobs = file.cases().stream().filter(job -> own.filter(job.address()::equals).isEmpty() && isBase(job, candidate))
                .toList();
        var base = new Base(jobs.stream().mapToDouble(CaseJob::weight).sum(),
                (int) jobs.stream().filter(job -> job.relative().isEmpty()).count());
        var found = jobs.stream().filter(job -> job.cause().filter(candidate.address()::equals).isPresent()).toList();
        var best = share(Optional.empty(), notes, found, known(notes).or(base), figure);
        var most = best;
        for (var note : notes.stream().filter(CaseNote::isTallied).toList()) {
            var other = share(Optional.of(note), notes, found, base, figure);
            best = other.prior() > best.prior() ? other : best;
            most = note.relative().isEmpty() && other.events() >= most.events() ? other : most;
        }
        var word = frequency == Frequency.NOT_RECORDED ? "" : frequency.getLiteral().toLowerCase(java.util.Locale.ROOT);
        return new Counted(most.events(), most.of(), best.prior(), best.worth(), word, relatives(notes, found));
    }

    /** A job on another machine of the family is one of the many only where that has the like of it. */
    private boolean isBase(CaseJob job, Candidate candidate) {
        return job.relative().isEmpty() || file.family().has(job.relative().get().machine(),
                candidate.component());
    }

    /**
     * Among about how many the shop counts: few jobs on record do not mean that few were done. Only notes on other
     * causes tell, so that a note never lowers its own.
     */
    private Base known(List<CaseNote> own) {
        return file.notes().stream().filter(note -> note.supports() && !own.contains(note)).map(Counting::base)
                .reduce(new Base(0, 0), Base::or);
    }

    private static Base base(CaseNote tally) {
        return new Base(tally.of() * tally.weight(), tally.relative().isEmpty() ? tally.of() : 0);
    }

    private Counted share(Optional<CaseNote> tally, List<CaseNote> notes, List<CaseJob> found, Base base, double figure) {
        var cases = cases(notes, found);
        cases.removeIf(one -> tally.filter(note -> note.covers(one.job(), one.day())).isPresent());
        var sum = cases.stream().mapToDouble(Case::counts).sum() + tally.map(note -> note.count() * counts(note)).orElse(0.0);
        int events = (int) cases.stream().filter(Case::isOwn).count()
                + tally.filter(note -> note.relative().isEmpty()).map(CaseNote::count).orElse(0);
        var whole = new Base(cases.stream().mapToDouble(Case::whole).sum()
                + tally.map(note -> note.count() * note.weight()).orElse(0.0), events);
        var of = whole.or(base).or(tally.map(Counting::base).orElse(base));
        var worth = weights.priorWorth();
        return new Counted(events, of.own(), new Share(sum, of.weighed()).after(figure, worth), worth + of.weighed(), "", 0);
    }

    private List<Case> cases(List<CaseNote> notes, List<CaseJob> found) {
        var cases = new ArrayList<Case>();
        found.forEach(job -> add(cases, new Case(Optional.of(job.address()), job.day(), job.weight(), job.weight(),
                job.relative().isEmpty())));
        notes.stream().filter(note -> !note.isTallied()).forEach(note -> add(cases, new Case(note.job(), note.day(),
                counts(note), note.weight(), note.relative().isEmpty())));
        return cases;
    }

    /** How many cases were met on other machines of the family, as the paper with the most of them says. */
    private int relatives(List<CaseNote> notes, List<CaseJob> found) {
        var others = notes.stream().filter(note -> note.relative().isPresent()).toList();
        int single = cases(others, found.stream().filter(job -> job.relative().isPresent()).toList()).size();
        return Math.max(single, others.stream().mapToInt(CaseNote::count).max().orElse(0));
    }

    private static void add(List<Case> cases, Case one) {
        var joined = one;
        for (var other : List.copyOf(cases)) {
            if (other.isSameAs(joined)) {
                cases.remove(other);
                joined = other.joined(joined);
            }
        }
        cases.add(joined);
    }

    /** What a case on this note counts for: less if only suspected, less if seen during other work. */
    private double counts(CaseNote note) {
        var elsewhere = note.during().stream().anyMatch(changing::contains)
                && note.during().stream().noneMatch(work::contains);
        return note.weight() * weights.counts(note.status()) * (elsewhere ? weights.of(WeightKind.OTHER_WORK_COUNTS) : 1);
    }
}
