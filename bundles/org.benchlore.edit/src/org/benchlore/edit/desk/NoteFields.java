// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.desk.Proposal.What;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;

/** What a note says beside its text, in the form of proposals that were accepted, each of which can be taken out. */
public final class NoteFields {

    private final Library library;

    /**
     * Makes a reader of fields.
     *
     * @param library an open library
     */
    public NoteFields(Library library) {
        this.library = library;
    }

    /**
     * Lists what stands in a note.
     *
     * @param note a note, as it is being written
     * @return one for each value: machine, unit, job, procedures, codes, component, cause, symptoms
     */
    public List<Proposal> in(FieldNote note) {
        var all = new ArrayList<Proposal>();
        add(all, What.MACHINE, note.getMachine());
        add(all, What.UNIT, note.getUnit());
        add(all, What.JOB, note.getJob());
        note.getDuring().forEach(procedure -> add(all, What.PROCEDURE, procedure));
        note.getCodes().forEach(code -> add(all, What.CODE, code));
        note.getCodesAsWritten().forEach(code -> all.add(new Proposal(What.CODE_AS_WRITTEN, code, Optional.empty())));
        add(all, What.COMPONENT, note.getComponent());
        add(all, What.CAUSE, note.getCause());
        note.getSymptoms().forEach(symptom -> all.add(new Proposal(What.SYMPTOM, symptom, Optional.empty())));
        return all;
    }

    private void add(List<Proposal> all, What what, EObject element) {
        Optional.ofNullable(element).flatMap(library::addressOf).ifPresent(address -> all.add(of(what, address)));
    }

    /**
     * Proposes an element by where it stands.
     *
     * @param what which field it would go into
     * @param address where the element stands
     * @return the proposal with the element's title, or its id where it has none
     */
    public Proposal of(What what, Address address) {
        return new Proposal(what, title(address), Optional.of(address));
    }

    private String title(Address address) {
        var row = library.catalogue().entry(address.path()).flatMap(entry -> entry.row());
        return row.filter(top -> top.address().equals(address)).map(NoteFields::title)
                .orElseGet(() -> library.element(address).filter(org.benchlore.model.Titled.class::isInstance)
                        .map(element -> ((org.benchlore.model.Titled) element).getTitle()).orElse(address.id()));
    }

    /** A code is known by its letters and digits first. */
    static String title(Row row) {
        var code = row.kind() == Kind.CODE ? row.codes().stream().findFirst().orElse("") : "";
        return code.isEmpty() || row.title().contains(code) ? row.title() : code + " " + row.title();
    }

    /**
     * Takes a value out.
     *
     * @param session the session of a note
     * @param value one of {@link #in}
     * @return the edit, which does nothing if the value is not there
     * @throws IllegalArgumentException if the session is not one of a note
     */
    public Edit remove(EditSession session, Proposal value) {
        if (!(session.element() instanceof FieldNote note)) {
            throw new IllegalArgumentException(session.title() + " is no note");
        }
        var edits = session.edits();
        return switch (value.what()) {
            case MACHINE -> edits.reference(note, Literals.FIELD_NOTE__MACHINE, Optional.empty());
            case UNIT -> edits.reference(note, Literals.FIELD_NOTE__UNIT, Optional.empty());
            case JOB -> edits.reference(note, Literals.FIELD_NOTE__JOB, Optional.empty());
            case COMPONENT -> edits.reference(note, Literals.FIELD_NOTE__COMPONENT, Optional.empty());
            case CAUSE -> edits.reference(note, Literals.FIELD_NOTE__CAUSE, Optional.empty());
            case PROCEDURE -> edits.references(note, Literals.FIELD_NOTE__DURING, others(note.getDuring(), value));
            case CODE -> edits.references(note, Literals.FIELD_NOTE__CODES, others(note.getCodes(), value));
            case CODE_AS_WRITTEN -> edits.lines(note, Literals.FIELD_NOTE__CODES_AS_WRITTEN,
                    without(note.getCodesAsWritten(), value));
            case SYMPTOM -> edits.lines(note, Literals.FIELD_NOTE__SYMPTOMS, without(note.getSymptoms(), value));
        };
    }

    private List<Address> others(List<? extends EObject> elements, Proposal value) {
        return elements.stream().map(library::addressOf).flatMap(Optional::stream)
                .filter(Predicate.not(address -> value.target().filter(address::equals).isPresent())).toList();
    }

    private static List<String> without(List<String> words, Proposal value) {
        return words.stream().filter(word -> !word.equals(value.text())).toList();
    }
}
