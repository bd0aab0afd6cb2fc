// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.desk.Proposal.What;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.FieldNote;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Unit;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.terms.CodeReader;

/**
 * Says what a note that is begun now is about, from what lies in front of whoever writes it: unit, machine, job, codes,
 * component, procedure. Only what is certain: of a procedure or a code, the machine only if there is just one.
 */
public final class Standpoint {

    private final Library library;
    private final NoteFields fields;

    /**
     * Makes it for a library.
     *
     * @param library an open library
     */
    public Standpoint(Library library) {
        this.library = library;
        this.fields = new NoteFields(library);
    }

    /**
     * Looks at the place.
     *
     * @param front the element that is selected or read, if any
     * @param typed what stands in the search field, which counts only where it is a fault code
     * @return what goes into the note, each once
     */
    public List<Proposal> of(Optional<Address> front, String typed) {
        var all = new ArrayList<Proposal>();
        front.ifPresent(address -> look(address, all));
        codes(typed, all);
        return all.stream().distinct().toList();
    }

    /**
     * Looks at the place of somebody who wants to know what is wrong: what the customer said counts as noticed. A note says
     * what was found, so it does not begin with that.
     *
     * @param front the element that is selected or read, if any
     * @param typed what stands in the search field, which counts only where it is a fault code
     * @return what is known of the case, each once
     */
    public List<Proposal> ofCase(Optional<Address> front, String typed) {
        var all = new ArrayList<>(of(front, typed));
        front.flatMap(library::element).filter(JobRecord.class::isInstance).map(job -> ((JobRecord) job).getComplaint())
                .filter(words -> !words.isBlank())
                .ifPresent(words -> all.add(new Proposal(What.SYMPTOM, words.strip(), Optional.empty())));
        return List.copyOf(all);
    }

    private void look(Address address, List<Proposal> all) {
        var row = library.catalogue().entry(address.path()).flatMap(entry -> entry.row());
        row.ifPresent(top -> {
            switch (top.kind()) {
                case UNIT -> unit(top.address(), all);
                case MACHINE -> machine(top, address, all);
                case JOB -> job(top, all);
                case CODE -> add(What.CODE, top, all);
                case PROCEDURE -> add(What.PROCEDURE, top, all);
                case NOTE -> note(top, all);
                default -> {
                }
            }
        });
    }

    private void add(What what, Row row, List<Proposal> all) {
        onlyMachine(row, all);
        all.add(fields.of(what, row.address()));
    }

    private void onlyMachine(Row row, List<Proposal> all) {
        if (row.machines().size() == 1) {
            all.add(fields.of(What.MACHINE, row.machines().get(0)));
        }
    }

    private void machine(Row row, Address address, List<Proposal> all) {
        all.add(fields.of(What.MACHINE, row.address()));
        library.element(address).filter(Component.class::isInstance)
                .ifPresent(component -> all.add(fields.of(What.COMPONENT, address)));
    }

    private void unit(Address address, List<Proposal> all) {
        library.element(address).filter(Unit.class::isInstance).map(unit -> ((Unit) unit).getMachine())
                .flatMap(library::addressOf).ifPresent(machine -> all.add(fields.of(What.MACHINE, machine)));
        all.add(fields.of(What.UNIT, address));
    }

    private void job(Row row, List<Proposal> all) {
        library.top(row.id()).filter(JobRecord.class::isInstance).map(JobRecord.class::cast).ifPresent(job -> {
            library.addressOf(job.getUnit()).ifPresent(unit -> unit(unit, all));
            all.add(fields.of(What.JOB, row.address()));
            job.getCodesOnArrival().stream().map(library::addressOf).flatMap(Optional::stream)
                    .forEach(code -> all.add(fields.of(What.CODE, code)));
            job.getCodesAsWritten().forEach(code -> all.add(new Proposal(What.CODE_AS_WRITTEN, code, Optional.empty())));
        });
    }

    /** A further note is about the same machine, but hardly about the same unit. */
    private void note(Row row, List<Proposal> all) {
        library.top(row.id()).filter(FieldNote.class::isInstance).map(note -> ((FieldNote) note).getMachine())
                .flatMap(library::addressOf).ifPresent(machine -> all.add(fields.of(What.MACHINE, machine)));
    }

    private void codes(String typed, List<Proposal> all) {
        var form = CodeReader.indexForm(typed);
        var known = form.isEmpty() ? Optional.<Row>empty() : library.catalogue().rows(Kind.CODE)
                .filter(row -> row.codes().stream().map(CodeReader::indexForm).anyMatch(form::equals)).findFirst();
        known.ifPresent(row -> add(What.CODE, row, all));
        if (known.isEmpty()) {
            var keys = CodeReader.findIn(typed);
            if (keys.size() == 1 && keys.get(0).indexForm().equals(form)) {
                all.add(new Proposal(What.CODE_AS_WRITTEN, keys.get(0).text(), Optional.empty()));
            }
        }
    }
}
