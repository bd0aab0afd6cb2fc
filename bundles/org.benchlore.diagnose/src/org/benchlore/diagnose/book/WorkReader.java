// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.diagnose.Named;
import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Part;
import org.benchlore.model.PartNeed;
import org.benchlore.model.PartUse;
import org.benchlore.model.Procedure;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Round;
import org.benchlore.model.RoundKind;
import org.benchlore.model.Work;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;

/** Reads what a work renewed and disturbed: from the unit's own job record, else from the procedure. */
public final class WorkReader {

    private final Library library;
    private final MachineBook book;

    /**
     * Makes a reader.
     *
     * @param book the machine
     */
    public WorkReader(MachineBook book) {
        this.library = book.library();
        this.book = book;
    }

    /**
     * Reads a work.
     *
     * @param procedure the procedure that was done
     * @param unit the unit it was done on, if it is known
     * @return what it did
     */
    public WorkDone read(Procedure procedure, Optional<Address> unit) {
        var address = library.addressOf(procedure).orElseThrow();
        var job = unit.flatMap(one -> job(address, one));
        var rounds = job.map(record -> untilItFailed(record, address)).orElse(List.of());
        var with = new LinkedHashSet<Address>();
        var disturbances = new Disturbances(book);
        collect(procedure, with, disturbances);
        rounds.forEach(round -> round.getDone().forEach(done -> library.addressOf(done.getProcedure())
                .ifPresent(with::add)));
        var renewed = job.isPresent() ? renewed(rounds) : renewed(procedure);
        return new WorkDone(new Named(address, procedure.getTitle() == null ? address.id() : procedure.getTitle()),
                procedure, with, renewed, disturbances.components(), disturbances.steps(), job, rounds);
    }

    private Optional<JobRecord> job(Address procedure, Address unit) {
        return library.catalogue().rows(Kind.JOB)
                .filter(row -> row.job().filter(job -> job.unit().filter(unit::equals).isPresent()
                        && job.done().contains(procedure)).isPresent())
                .max(Comparator.comparing((Row row) -> row.date().map(Object::toString).orElse("")).thenComparing(Row::path))
                .flatMap(row -> library.top(row.id())).map(JobRecord.class::cast);
    }

    /** What came after the last teach-in that failed is not known yet when it fails; but the work itself has been done. */
    private List<Round> untilItFailed(JobRecord job, Address procedure) {
        var rounds = job.getRounds();
        int failed = -1;
        int done = -1;
        for (int i = 0; i < rounds.size(); i++) {
            failed = rounds.get(i).getKind() == RoundKind.TEACH_IN_FAILED ? i : failed;
            done = rounds.get(i).getDone().stream().anyMatch(it -> library.addressOf(it.getProcedure()).filter(procedure::equals)
                    .isPresent()) ? i : done;
        }
        return List.copyOf(failed < 0 ? rounds : rounds.subList(0, Math.max(failed, done) + 1));
    }

    private Set<Address> renewed(List<Round> rounds) {
        var all = new HashSet<Address>();
        rounds.forEach(round -> round.getDone().forEach(done -> all.addAll(CaseNote.addresses(library, done.getRenewed()))));
        return all;
    }

    private void collect(Procedure procedure, Set<Address> with, Disturbances disturbances) {
        if (procedure == null || !library.addressOf(procedure).filter(with::add).isPresent()) {
            return;
        }
        var openings = new Openings(book);
        var opened = procedure.getWays().stream().findFirst().flatMap(openings::of).map(Openings.Opening::accesses)
                .orElse(List.of());
        opened.forEach(access -> disturbances.read(access.getStrip()));
        procedure.getWays().stream().findFirst().ifPresent(way -> disturbances.read(way.getWork()));
        procedure.getIncludes().forEach(one -> load(one).ifPresent(other -> collect(other, with, disturbances)));
        procedure.getAfterClosing().forEach(one -> after(one, with, disturbances));
        opened.stream().map(Access::getAfterClosing).forEach(all -> all.forEach(one -> after(one, with, disturbances)));
    }

    /** What is bled or filled after closing has been opened: its component is disturbed. */
    private void after(Procedure reference, Set<Address> with, Disturbances disturbances) {
        load(reference).ifPresent(other -> {
            library.addressOf(other).ifPresent(with::add);
            if (other.getKind() == ProcedureKind.SERVICE) {
                library.addressOf(other.getComponent()).ifPresent(component -> disturbances.disturbed(component,
                        "opened, so that '" + other.getTitle() + "' is done after it"));
            }
        });
    }

    private Optional<Procedure> load(EObject reference) {
        return library.resolve(reference).filter(Procedure.class::isInstance).map(Procedure.class::cast);
    }

    /** Components that a procedure always renews, in whatever it includes as well. */
    Set<Address> renewed(Procedure procedure) {
        var all = new HashSet<Address>();
        procedure.getWays().stream().findFirst().map(way -> way.getWork()).map(Work::getParts)
                .ifPresent(uses -> uses.stream().filter(use -> use.getNeed() == PartNeed.ALWAYS)
                        .forEach(use -> renewed(use, all)));
        procedure.getIncludes().forEach(one -> load(one).ifPresent(other -> all.addAll(renewed(other))));
        return all;
    }

    private void renewed(PartUse use, Set<Address> all) {
        var named = library.addressOf(use.getComponent());
        if (named.isPresent()) {
            all.add(named.get());
        } else {
            var parts = new HashSet<Address>();
            collect(use.getPart(), parts);
            book.components().forEach((address, component) -> {
                if (CaseNote.addresses(library, component.getParts()).stream().anyMatch(parts::contains)) {
                    all.add(address);
                }
            });
        }
    }

    private void collect(EObject reference, Set<Address> parts) {
        if (library.addressOf(reference).filter(parts::add).isPresent()) {
            library.resolve(reference).filter(Part.class::isInstance)
                    .ifPresent(part -> ((Part) part).getKit().forEach(line -> collect(line.getPart(), parts)));
        }
    }
}
