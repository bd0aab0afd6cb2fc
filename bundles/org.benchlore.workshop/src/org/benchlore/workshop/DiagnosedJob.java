// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.benchlore.diagnose.Path;
import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.SaveResult;
import org.benchlore.edit.desk.QuickChange;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Cause;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.model.Kind;
import org.benchlore.model.Unit;
import org.benchlore.store.KindFacts.JobFacts;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;

/**
 * Writes the way of a diagnosis into a job record of the unit: complaint, codes, what was checked, and the cause if a check
 * found it. Only what the record does not hold yet is added, nothing is written over, and it can be taken back.
 */
public final class DiagnosedJob {

    private static final String LABEL = "write down what was checked";

    private final OpenLibrary opened;

    /**
     * What was written, and how it is taken back.
     *
     * @param job where the record stands
     * @param back takes it back; empty if the record is being edited, where it is undone with the rest
     */
    public record Written(Address job, Optional<TakeBack> back) {
    }

    /** Takes a change back, or says in one sentence why not. */
    public interface TakeBack {

        /**
         * Does it.
         *
         * @throws LibraryException if the record was changed since, or cannot be written
         */
        void run() throws LibraryException;
    }

    /**
     * Makes it.
     *
     * @param opened the library that was asked
     */
    public DiagnosedJob(OpenLibrary opened) {
        this.opened = opened;
    }

    /**
     * Lists the jobs of a unit that are not handed back.
     *
     * @param unit address of a unit
     * @return their rows, the latest first
     */
    public List<Row> open(Address unit) {
        return opened.library().catalogue().rows(Kind.JOB).filter(row -> row.job().flatMap(JobFacts::unit)
                .filter(unit::equals).isPresent() && isOpen(row))
                .sorted(Comparator.comparing((Row row) -> row.date().map(LocalDate::toString).orElse("")).reversed()
                        .thenComparing(Row::path)).toList();
    }

    private boolean isOpen(Row row) {
        return opened.library().top(row.id()).filter(JobRecord.class::isInstance)
                .filter(job -> ((JobRecord) job).getState() != JobState.CLOSED).isPresent();
    }

    /**
     * Adds to a job record.
     *
     * @param path the way that was gone
     * @param job where the record stands
     * @param today the day
     * @return what was written
     * @throws LibraryException if it cannot be edited or saved, or there is nothing to add, in one sentence
     */
    public Written add(Path path, Address job, LocalDate today) throws LibraryException {
        try {
            var change = QuickChange.make(opened.sessions(), job.path(), session -> edit(session, path, today)
                    .orElseThrow(() -> new IllegalArgumentException("The job record holds all of it already.")));
            return new Written(job, change.map(one -> one::takeBack));
        } catch (IllegalArgumentException e) {
            throw new LibraryException(e.getMessage(), e);
        }
    }

    /**
     * Begins a job record.
     *
     * @param path the way that was gone, about a unit
     * @param today the day on which it begins
     * @return what was written
     * @throws LibraryException if it is about no unit, or cannot be saved, in one sentence
     */
    public Written begin(Path path, LocalDate today) throws LibraryException {
        var unit = opened.library().element(path.about()).filter(Unit.class::isInstance).map(Unit.class::cast)
                .orElseThrow(() -> new LibraryException("A job is done on one unit: choose a unit, not a machine."));
        try (var session = opened.sessions().create(Kind.JOB, title(unit, path), today.getYear())) {
            var edits = session.edits();
            session.execute(edits.reference(session.element(), Literals.JOB_RECORD__UNIT, Optional.of(path.about())));
            session.execute(edits.value(session.element(), Literals.JOB_RECORD__STATE, JobState.OPEN));
            session.execute(edits.value(session.element(), Literals.JOB_RECORD__OPENED, today));
            edit(session, path, today).ifPresent(session::execute);
            if (session.save() instanceof SaveResult.Stopped stopped) {
                throw new LibraryException(stopped.conflict().sentence());
            }
            var file = session.base().orElseThrow();
            return new Written(new Address(file.path(), session.element().getId()),
                    Optional.of(() -> new PlannedJob(opened).takeBack(file)));
        }
    }

    private static String title(Unit unit, Path path) {
        var name = unit.getTitle() == null ? unit.getId() : unit.getTitle();
        return path.symptoms().stream().findFirst().or(() -> path.codesAsWritten().stream().findFirst())
                .or(() -> path.leading().map(leading -> leading.title())).map(what -> name + ": " + what).orElse(name);
    }

    private Optional<Edit> edit(EditSession session, Path path, LocalDate today) {
        if (!(session.element() instanceof JobRecord job)) {
            throw new IllegalArgumentException("'" + session.title() + "' is no job record.");
        }
        var all = new ArrayList<Edit>();
        complaint(session.edits(), job, path).ifPresent(all::add);
        codes(session.edits(), job, path, all);
        round(session, job, path, today).ifPresent(all::add);
        if (path.isFound()) {
            found(session.edits(), job, path, all);
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(Edits.all(LABEL, all));
    }

    /** The customer's words stay; what was noticed besides is put below them. */
    private static Optional<Edit> complaint(Edits edits, JobRecord job, Path path) {
        var now = job.getComplaint() == null ? "" : job.getComplaint().strip();
        var more = path.symptoms().stream().filter(symptom -> !low(now).contains(low(symptom))).toList();
        return more.isEmpty() ? Optional.empty() : Optional.of(edits.text(job, Literals.JOB_RECORD__COMPLAINT,
                (now.isEmpty() ? "" : now + "\n") + String.join("\n", more)));
    }

    private static String low(String words) {
        return words.toLowerCase(Locale.ROOT);
    }

    private void codes(Edits edits, JobRecord job, Path path, List<Edit> all) {
        var known = addresses(job.getCodesOnArrival());
        if (known.addAll(path.codes())) {
            all.add(edits.references(job, Literals.JOB_RECORD__CODES_ON_ARRIVAL, List.copyOf(known)));
        }
        var written = new LinkedHashSet<>(job.getCodesAsWritten());
        if (written.addAll(path.codesAsWritten())) {
            all.add(edits.lines(job, Literals.JOB_RECORD__CODES_AS_WRITTEN, List.copyOf(written)));
        }
    }

    private LinkedHashSet<Address> addresses(List<? extends EObject> references) {
        var found = new LinkedHashSet<Address>();
        references.forEach(one -> opened.library().addressOf(one).ifPresent(found::add));
        return found;
    }

    /** What was checked is a round of its own, unless one says the same. */
    private static Optional<Edit> round(EditSession session, JobRecord job, Path path, LocalDate today) {
        var text = path.added();
        if (text.isEmpty() || job.getRounds().stream().anyMatch(round -> text.equals(round.getText()))) {
            return Optional.empty();
        }
        var round = BookFactory.eINSTANCE.createRound();
        round.setDate(today);
        round.setText(text);
        return Optional.of(session.edits().inner().add(job, Literals.JOB_RECORD__ROUNDS, round, InnerEdits.END).edit());
    }

    /** A cause that somebody wrote down before is not written over. */
    private void found(Edits edits, JobRecord job, Path path, List<Edit> all) {
        var cause = path.leading().filter(leading -> opened.library().element(leading.address())
                .filter(Cause.class::isInstance).isPresent());
        if (cause.isPresent() && job.getCause() == null) {
            all.add(edits.reference(job, Literals.JOB_RECORD__CAUSE, Optional.of(cause.get().address())));
        }
        var failed = addresses(job.getFailed());
        if (path.component().filter(failed::add).isPresent()) {
            all.add(edits.references(job, Literals.JOB_RECORD__FAILED, List.copyOf(failed)));
        }
    }
}
