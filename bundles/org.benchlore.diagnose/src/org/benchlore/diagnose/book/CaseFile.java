// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.Applicability;
import org.benchlore.model.Document;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.Unit;
import org.benchlore.store.KindFacts;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/**
 * All papers of a library that speak of one machine, and notes and jobs on others of its family.
 *
 * @param notes its field notes that name a cause or a component, superseded ones left out
 * @param jobs its job records
 * @param cases those of them that are evidence
 * @param documents its documents that are current
 * @param family the other machines of the family
 */
public record CaseFile(List<CaseNote> notes, List<CaseJob> jobs, List<CaseJob> cases, List<CaseDocument> documents, Family family) {

    /**
     * Collects the papers of a machine.
     *
     * @param book the machine
     * @param family its family
     * @param unit the unit, if it is known
     * @return the papers, by path
     */
    public static CaseFile of(MachineBook book, Family family, Optional<Unit> unit) {
        var library = book.library();
        var machine = book.address();
        var facts = library.catalogue();
        var notes = facts.rows(Kind.NOTE).filter(row -> isOf(machine, family, row.machines()))
                .filter(row -> row.cause().isPresent() || !row.components().isEmpty())
                .filter(row -> !row.status().equals("SUPERSEDED"))
                .map(row -> note(library, row, family)).filter(Objects::nonNull).toList();
        var jobs = facts.rows(Kind.JOB).filter(row -> isOf(machine, family, machines(library, row)))
                .map(row -> CaseJob.of(row, family, family.of(machines(library, row)))).toList();
        var documents = facts.rows(Kind.DOCUMENT).filter(row -> row.machines().contains(machine))
                .filter(row -> !row.status().equals("SUPERSEDED"))
                .map(row -> document(library, row, machine, unit)).filter(Objects::nonNull).toList();
        var about = unit.flatMap(library::addressOf);
        var cases = jobs.stream().filter(job -> job.isEvidence(about)).toList();
        return new CaseFile(notes, jobs, cases, documents, family);
    }

    private static boolean isOf(Address machine, Family family, Collection<Address> machines) {
        return machines.contains(machine) || family.of(machines).isPresent();
    }

    private static CaseNote note(Library library, Row row, Family family) {
        return library.top(row.id()).filter(FieldNote.class::isInstance).map(note -> CaseNote.of(library, row.address(),
                (FieldNote) note, family, family.of(row.machines()))).orElse(null);
    }

    private static Collection<Address> machines(Library library, Row row) {
        var unit = row.job().flatMap(KindFacts.JobFacts::unit).flatMap(library.catalogue()::at);
        return unit.map(Row::machines).orElse(row.machines());
    }

    private static CaseDocument document(Library library, Row row, Address machine, Optional<Unit> unit) {
        return library.top(row.id()).filter(Document.class::isInstance).map(Document.class::cast)
                .map(document -> new CaseDocument(row.address(), title(document, row),
                        CaseNote.addresses(library, document.getCodes()), List.copyOf(document.getSymptoms()),
                        CaseNote.addresses(library, document.getComponents()),
                        unit.isEmpty() || document.getApplicability().isEmpty() || document.getApplicability().stream()
                                .anyMatch(one -> fits(library, one, machine, unit.get())))).orElse(null);
    }

    private static String title(Document document, Row row) {
        return document.getNumber() == null ? row.title() : document.getNumber() + ": " + row.title();
    }

    private static boolean fits(Library library, Applicability one, Address machine, Unit unit) {
        var serial = unit.getSerial();
        return library.addressOf(one.getMachine()).filter(machine::equals).isPresent()
                && (serial == null || isWithin(serial, one.getSerialFrom(), one.getSerialTo()))
                && (one.getVariants().isEmpty() || unit.getVariant() == null
                        || one.getVariants().contains(unit.getVariant()));
    }

    /** Serial numbers of one maker are compared as they are written, the shorter before the longer. */
    static boolean isWithin(String serial, String from, String to) {
        return (from == null || compare(from, serial) <= 0) && (to == null || compare(serial, to) <= 0);
    }

    private static int compare(String one, String other) {
        return one.length() == other.length() ? one.compareTo(other) : Integer.compare(one.length(), other.length());
    }
}
