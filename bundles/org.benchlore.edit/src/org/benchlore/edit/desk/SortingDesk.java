// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.model.FieldNote;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Library;
import org.benchlore.store.KindFacts;
import org.benchlore.store.Row;

/** The lead's monthly view: what waits to be sorted and to be confirmed. Files are loaded only where facts ask for it. */
public final class SortingDesk {

    private static final Set<String> OPEN = Set.of("SUSPECTED", "SEEN");

    private final Library library;

    /**
     * Makes the desk of a library.
     *
     * @param library an open library
     */
    public SortingDesk(Library library) {
        this.library = library;
    }

    /**
     * Returns the notes that nobody has sorted.
     *
     * @return their rows, the oldest first; those without a date before all others
     */
    public List<Row> unsorted() {
        return unsorted(library.catalogue());
    }

    static List<Row> unsorted(Catalogue catalogue) {
        return oldestFirst(catalogue.rows(Kind.NOTE).filter(row -> row.status().equals("UNSORTED")));
    }

    private static List<Row> oldestFirst(Stream<Row> rows) {
        return rows.sorted(Comparator.comparing((Row row) -> row.date().orElse(LocalDate.MIN)).thenComparing(Row::id))
                .toList();
    }

    /**
     * Returns the fixes of which nobody has said whether they held: notes that are suspected or seen and say what was
     * done but not how it was proved, and closed jobs with work done, without a proof and without a comeback.
     *
     * @param today the day it is
     * @param days how many days must have passed
     * @return their rows, the oldest first
     */
    public List<Row> toConfirm(LocalDate today, int days) {
        var limit = today.minusDays(days);
        var notes = library.catalogue().rows(Kind.NOTE)
                .filter(row -> OPEN.contains(row.status()) && isBefore(row.date(), limit)).filter(this::isUnproved);
        var comebacks = library.catalogue().rows(Kind.JOB).map(Row::job).flatMap(Optional::stream)
                .map(KindFacts.JobFacts::comebackOf).flatMap(Optional::stream).map(address -> address.path()).toList();
        var jobs = library.catalogue().rows(Kind.JOB)
                .filter(row -> row.status().equals("CLOSED") && !comebacks.contains(row.path()))
                .filter(row -> row.job().filter(job -> !job.done().isEmpty()).isPresent())
                .filter(row -> isUnproved(row, limit));
        return oldestFirst(Stream.concat(notes, jobs));
    }

    private static boolean isBefore(Optional<LocalDate> date, LocalDate limit) {
        return date.filter(day -> !day.isAfter(limit)).isPresent();
    }

    private boolean isUnproved(Row row) {
        return library.top(row.id()).filter(FieldNote.class::isInstance).map(FieldNote.class::cast)
                .filter(note -> isWritten(note.getAction()) && !isWritten(note.getVerification())).isPresent();
    }

    private boolean isUnproved(Row row, LocalDate limit) {
        return library.top(row.id()).filter(JobRecord.class::isInstance).map(JobRecord.class::cast)
                .filter(job -> isBefore(Optional.ofNullable(job.getClosed()).or(row::date), limit))
                .filter(job -> !isWritten(job.getVerification())).isPresent();
    }

    private static boolean isWritten(String text) {
        return !Objects.requireNonNullElse(text, "").isBlank();
    }

    /**
     * Returns work that a customer declined and that failed later on the same unit.
     *
     * @return the cases, the latest failure first
     */
    public List<DeclinedWork.Case> declinedThatFailed() {
        return new DeclinedWork(library).cases();
    }
}
