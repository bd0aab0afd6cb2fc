// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.desk.KnownNames.Name;
import org.benchlore.edit.desk.Proposal.What;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.terms.CodeReader;

/**
 * Proposes, from a note's text, the unit, codes, component and symptoms that it speaks of. Only what is not in the note
 * yet is proposed; nothing is put in by itself.
 */
public final class NoteProposals {

    private static final int SHORTEST_NAME = 4;
    private static final int TELLING = 2;

    private final Library library;
    private final KnownNames names;

    /**
     * Makes proposals from what a library knows.
     *
     * @param library an open library
     */
    public NoteProposals(Library library) {
        this.library = library;
        this.names = new KnownNames(library);
    }

    /**
     * Reads a note.
     *
     * @param note a note, as it is being written
     * @return the proposals: unit, codes, components, symptoms
     */
    public List<Proposal> of(FieldNote note) {
        var text = new TextWords(note.getText());
        var found = new ArrayList<Proposal>();
        var units = note.getUnit() == null ? longest(names.units(), text) : List.<Name>of();
        units.forEach(unit -> found.add(new Proposal(What.UNIT, unit.title(), Optional.of(unit.address()))));
        found.addAll(codes(note));
        if (note.getComponent() == null) {
            longest(components(note, units), text).forEach(component ->
                    found.add(new Proposal(What.COMPONENT, component.title(), Optional.of(component.address()))));
        }
        found.addAll(symptoms(note, text));
        return found;
    }

    /** Names that stand in a text; one that stands within a longer one is left out, and each element comes once. */
    private static List<Name> longest(List<Name> names, TextWords text) {
        var taken = new HashSet<Integer>();
        var found = new LinkedHashMap<Address, Name>();
        var byLength = names.stream().filter(NoteProposals::isTelling)
                .sorted(Comparator.comparing((Name name) -> -name.words().all().size())).toList();
        for (var name : byLength) {
            int at = text.indexOf(name.words());
            if (at >= 0 && (!taken.contains(at) || found.containsKey(name.address()))) {
                found.putIfAbsent(name.address(), name);
                for (int i = 0; i < name.words().all().size(); i++) {
                    taken.add(at + i);
                }
            }
        }
        return List.copyOf(found.values());
    }

    private static boolean isTelling(Name name) {
        var words = name.words().all();
        return words.size() > 1 || words.size() == 1 && words.get(0).length() >= SHORTEST_NAME;
    }

    /** Of the note's machine, else of its unit's, else of the proposed units', else of all. */
    private List<Name> components(FieldNote note, List<Name> units) {
        var machines = new LinkedHashSet<String>();
        library.addressOf(note.getMachine()).map(Address::path).ifPresent(machines::add);
        if (machines.isEmpty()) {
            library.addressOf(note.getUnit()).flatMap(this::machine).map(Address::path).ifPresent(machines::add);
        }
        if (machines.isEmpty()) {
            units.stream().map(Name::machine).flatMap(Optional::stream).map(Address::path).forEach(machines::add);
        }
        var paths = machines.isEmpty() ? library.catalogue().rows(Kind.MACHINE).map(Row::path).toList()
                : List.copyOf(machines);
        return paths.stream().flatMap(path -> names.in(path).stream()).toList();
    }

    private Optional<Address> machine(Address unit) {
        return names.in(unit.path()).stream().map(Name::machine).flatMap(Optional::stream).findFirst();
    }

    private List<Proposal> codes(FieldNote note) {
        var known = new HashMap<String, Row>();
        library.catalogue().rows(Kind.CODE).forEach(row -> row.codes()
                .forEach(code -> known.putIfAbsent(CodeReader.indexForm(code), row)));
        var there = note.getCodes().stream().map(library::addressOf).flatMap(Optional::stream).collect(Collectors.toSet());
        var written = note.getCodesAsWritten().stream().map(CodeReader::indexForm).collect(Collectors.toSet());
        var found = new LinkedHashMap<String, Proposal>();
        var text = note.getText() == null ? "" : note.getText();
        CodeReader.findIn(text).forEach(key -> found.put(key.indexForm(), proposal(key.text(), known.get(key.indexForm()))));
        wordsAsCodes(text).filter(known::containsKey)
                .forEach(form -> found.putIfAbsent(form, proposal(form, known.get(form))));
        found.keySet().removeAll(written);
        return found.values().stream().filter(one -> one.target().isEmpty() || !there.contains(one.target().get()))
                .distinct().toList();
    }

    /** A maker's own code such as 4C17 stands in a text like any word; it counts only if the library holds it. */
    private static Stream<String> wordsAsCodes(String text) {
        return Stream.of(text.split("[^\\p{L}\\p{N}-]+")).filter(word -> word.length() >= SHORTEST_NAME
                && word.chars().anyMatch(Character::isDigit)).map(CodeReader::indexForm);
    }

    private static Proposal proposal(String code, Row known) {
        return known == null ? new Proposal(What.CODE_AS_WRITTEN, code, Optional.empty())
                : new Proposal(What.CODE, NoteFields.title(known), Optional.of(known.address()));
    }

    /** Symptoms of other elements, of which every telling word stands in the text. */
    private List<Proposal> symptoms(FieldNote note, TextWords text) {
        var words = Set.copyOf(text.all());
        var there = note.getSymptoms().stream().map(one -> new TextWords(one).all()).collect(Collectors.toSet());
        Map<List<String>, String> known = new LinkedHashMap<>();
        library.catalogue().rows().filter(row -> !row.id().equals(note.getId())).flatMap(row -> row.symptoms().stream())
                .forEach(symptom -> known.putIfAbsent(new TextWords(symptom).all(), symptom));
        return known.values().stream().filter(symptom -> !there.contains(new TextWords(symptom).all()))
                .filter(symptom -> new TextWords(symptom).telling().size() >= TELLING)
                .filter(symptom -> words.containsAll(new TextWords(symptom).telling()))
                .map(symptom -> new Proposal(What.SYMPTOM, symptom, Optional.empty())).toList();
    }

    /**
     * Accepts a proposal.
     *
     * @param session the session of the note
     * @param proposal one of {@link #of}
     * @return the edit; a unit brings its machine along where the note has none
     * @throws IllegalArgumentException if the session is not one of a note
     */
    public Edit accept(EditSession session, Proposal proposal) {
        if (!(session.element() instanceof FieldNote note)) {
            throw new IllegalArgumentException(session.title() + " is no note");
        }
        var edits = session.edits();
        return switch (proposal.what()) {
            case MACHINE -> edits.reference(note, Literals.FIELD_NOTE__MACHINE, proposal.target());
            case JOB -> edits.reference(note, Literals.FIELD_NOTE__JOB, proposal.target());
            case PROCEDURE -> edits.addReference(note, Literals.FIELD_NOTE__DURING, proposal.target().orElseThrow());
            case UNIT -> unit(edits, note, proposal);
            case CODE -> edits.addReference(note, Literals.FIELD_NOTE__CODES, proposal.target().orElseThrow());
            case CODE_AS_WRITTEN -> edits.lines(note, Literals.FIELD_NOTE__CODES_AS_WRITTEN,
                    with(note.getCodesAsWritten(), proposal.text()));
            case COMPONENT -> edits.reference(note, Literals.FIELD_NOTE__COMPONENT, proposal.target());
            case CAUSE -> edits.reference(note, Literals.FIELD_NOTE__CAUSE, proposal.target());
            case SYMPTOM -> edits.lines(note, Literals.FIELD_NOTE__SYMPTOMS, with(note.getSymptoms(), proposal.text()));
        };
    }

    private Edit unit(Edits edits, FieldNote note, Proposal proposal) {
        var all = new ArrayList<>(List.of(edits.reference(note, Literals.FIELD_NOTE__UNIT, proposal.target())));
        if (note.getMachine() == null) {
            proposal.target().flatMap(this::machine).ifPresent(machine ->
                    all.add(edits.reference(note, Literals.FIELD_NOTE__MACHINE, Optional.of(machine))));
        }
        return Edits.all("change unit", all);
    }

    private static List<String> with(List<String> words, String further) {
        return Stream.concat(words.stream(), Stream.of(further)).toList();
    }
}
