// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.NoteStatus;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * How far a note is proved, and what a status needs before it may be given: suspected says of what machine; seen says
 * what was found; held says what was done and how it was proved; ruled out says why; superseded names the other note.
 */
public final class NoteStatuses {

    /**
     * Something that a status needs and the note lacks.
     *
     * @param feature the field to fill in
     * @param sentence what to write there
     */
    public record Lack(EStructuralFeature feature, String sentence) {
    }

    private NoteStatuses() {
    }

    /**
     * Says what a note lacks for a status.
     *
     * @param note a note
     * @param status the status wanted
     * @return what to fill in first; empty if the status may be given
     */
    public static List<Lack> lacks(FieldNote note, NoteStatus status) {
        var lacks = new ArrayList<Lack>();
        switch (status) {
            case SUSPECTED -> about(note, lacks);
            case SEEN -> seen(note, lacks);
            case HELD -> held(note, lacks);
            case RULED_OUT -> any(note, lacks, "Write why it is ruled out: what was found, or how it was proved",
                    Literals.FIELD_NOTE__VERIFICATION, Literals.FIELD_NOTE__FINDING);
            case SUPERSEDED -> any(note, lacks, "Name the note that replaces it", Literals.FIELD_NOTE__SUPERSEDED_BY);
            default -> { }
        }
        return lacks;
    }

    private static void about(FieldNote note, List<Lack> lacks) {
        any(note, lacks, "Say on which machine or unit", Literals.FIELD_NOTE__MACHINE, Literals.FIELD_NOTE__UNIT);
    }

    private static void seen(FieldNote note, List<Lack> lacks) {
        about(note, lacks);
        any(note, lacks, "Write what was found, or name the component or the cause", Literals.FIELD_NOTE__FINDING,
                Literals.FIELD_NOTE__COMPONENT, Literals.FIELD_NOTE__CAUSE);
    }

    private static void held(FieldNote note, List<Lack> lacks) {
        seen(note, lacks);
        any(note, lacks, "Write what was done", Literals.FIELD_NOTE__ACTION);
        any(note, lacks, "Write how it was proved that it held", Literals.FIELD_NOTE__VERIFICATION);
    }

    private static void any(FieldNote note, List<Lack> lacks, String sentence, EStructuralFeature... features) {
        for (var feature : features) {
            if (isFilled(note, feature)) {
                return;
            }
        }
        lacks.add(new Lack(features[0], sentence));
    }

    private static boolean isFilled(EObject note, EStructuralFeature feature) {
        var value = note.eGet(feature);
        return value instanceof String text ? !text.isBlank() : value != null;
    }

    /**
     * Gives a note a status.
     *
     * @param session the session of a note
     * @param status the status
     * @return the edit; a note that is no longer superseded names no other note any more
     * @throws IllegalArgumentException with a plain sentence if the note lacks what the status needs
     */
    public static Edit change(EditSession session, NoteStatus status) {
        var note = note(session);
        var lacks = lacks(note, status);
        if (!lacks.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", lacks.stream().map(Lack::sentence).toList()));
        }
        var all = new ArrayList<Edit>();
        all.add(session.edits().value(note, Literals.FIELD_NOTE__STATUS, status == NoteStatus.UNSORTED ? null : status));
        if (status != NoteStatus.SUPERSEDED && note.getSupersededBy() != null) {
            all.add(session.edits().reference(note, Literals.FIELD_NOTE__SUPERSEDED_BY, Optional.empty()));
        }
        return Edits.all("change status", all);
    }

    /**
     * Sets a note aside in favour of another one.
     *
     * @param session the session of the note that goes
     * @param other the note that replaces it
     * @return the edit
     * @throws IllegalArgumentException if that would lead back to the note itself
     */
    public static Edit supersede(EditSession session, Address other) {
        var note = note(session);
        if (leadsTo(session, other)) {
            throw new IllegalArgumentException("A note cannot replace itself, nor one that it was replaced by: name another");
        }
        return Edits.all("replace by another note", List.of(
                session.edits().reference(note, Literals.FIELD_NOTE__SUPERSEDED_BY, Optional.of(other)),
                session.edits().value(note, Literals.FIELD_NOTE__STATUS, NoteStatus.SUPERSEDED)));
    }

    private static boolean leadsTo(EditSession session, Address other) {
        var seen = new ArrayList<Address>();
        var at = Optional.of(other);
        while (at.isPresent() && !seen.contains(at.get())) {
            if (at.get().path().equals(session.path())) {
                return true;
            }
            seen.add(at.get());
            at = session.library().element(at.get()).filter(FieldNote.class::isInstance).map(FieldNote.class::cast)
                    .flatMap(note -> session.library().addressOf(note.getSupersededBy()));
        }
        return false;
    }

    private static FieldNote note(EditSession session) {
        if (session.element() instanceof FieldNote note) {
            return note;
        }
        throw new IllegalArgumentException(session.title() + " is no note: only notes have this status");
    }
}
