// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.LinkedHashMap;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.SharedEdit;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Media;
import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.Work;

/**
 * Makes a step of a procedure from what a note says. The step's 'why' links to the note, and the note says during which
 * procedure; pictures go with it. Both files are changed by one edit, which is undone as one. Nothing is saved yet.
 */
public final class NoteToStep {

    private NoteToStep() {
    }

    /**
     * Does it.
     *
     * @param note the session of a note
     * @param procedure the session of a procedure
     * @param work the work in that procedure that takes the step
     * @param index where among its steps, from 0
     * @return the new step
     * @throws IllegalArgumentException if the sessions or the work do not fit, or the note has no text
     */
    public static Step execute(EditSession note, EditSession procedure, Work work, int index) {
        if (!(note.element() instanceof FieldNote source) || !(procedure.element() instanceof Procedure)
                || work.eResource() != procedure.element().eResource()) {
            throw new IllegalArgumentException("A step is made from a note, for a procedure that is being edited");
        }
        if (source.getText() == null || source.getText().isBlank()) {
            throw new IllegalArgumentException("The note has no text yet: write what was learned first");
        }
        var step = BookFactory.eINSTANCE.createStep();
        step.setText(source.getText().strip());
        step.setWhy("From {note:" + source.getId() + "}.");
        source.getMedia().forEach(media -> step.getMedia().add(picture(media)));
        var adding = procedure.edits().inner().add(work, Literals.WORK__STEPS, step, index);
        var edits = new LinkedHashMap<EditSession, Edit>();
        edits.put(procedure, adding.edit());
        edits.put(note, note.edits().addReference(source, Literals.FIELD_NOTE__DURING,
                new Address(procedure.path(), procedure.element().getId())));
        SharedEdit.execute("make a step from a note", edits);
        return step;
    }

    /** The same picture on the shelf with the same caption. */
    private static Media picture(Media shown) {
        var media = BookFactory.eINSTANCE.createMedia();
        media.setFile(shown.getFile());
        media.setCaption(shown.getCaption());
        return media;
    }
}
