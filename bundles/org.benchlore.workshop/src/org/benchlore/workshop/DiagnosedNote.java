// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.diagnose.Path;
import org.benchlore.edit.desk.NoteFields;
import org.benchlore.edit.desk.NoteStart;
import org.benchlore.edit.desk.Proposal;
import org.benchlore.edit.desk.Proposal.What;
import org.benchlore.edit.desk.Standpoint;
import org.benchlore.model.Address;
import org.benchlore.model.Cause;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.store.Library;

/**
 * What a note begins with that is written down after a diagnosis: the way in words, and every field that is known. The
 * cause goes in only if a check found it; one that merely stood first is offered, since a note that names a cause counts
 * as a case of it.
 */
public final class DiagnosedNote {

    private final Library library;
    private final NoteFields fields;

    /**
     * Makes it for a library.
     *
     * @param library the library that was asked
     */
    public DiagnosedNote(Library library) {
        this.library = library;
        this.fields = new NoteFields(library);
    }

    /**
     * Begins the note.
     *
     * @param path the way that was gone
     * @return text and fields
     */
    public NoteStart of(Path path) {
        var about = new ArrayList<Proposal>(new Standpoint(library).of(Optional.of(path.about()), ""));
        openJob(path).ifPresent(job -> about.add(fields.of(What.JOB, job)));
        path.during().ifPresent(work -> about.add(fields.of(What.PROCEDURE, work)));
        path.codes().forEach(code -> about.add(fields.of(What.CODE, code)));
        path.codesAsWritten().forEach(code -> about.add(new Proposal(What.CODE_AS_WRITTEN, code, Optional.empty())));
        path.symptoms().forEach(symptom -> about.add(new Proposal(What.SYMPTOM, symptom, Optional.empty())));
        var conclusion = conclusion(path);
        if (path.isFound()) {
            about.addAll(conclusion);
        }
        return new NoteStart(path.text(), about, conclusion);
    }

    /** The job that is still in hand; what comes up after it was handed back is another case. */
    private Optional<Address> openJob(Path path) {
        return path.job().filter(job -> library.element(job).filter(JobRecord.class::isInstance)
                .filter(one -> ((JobRecord) one).getState() != JobState.CLOSED).isPresent());
    }

    private List<Proposal> conclusion(Path path) {
        var all = new ArrayList<Proposal>();
        path.component().ifPresent(component -> all.add(fields.of(What.COMPONENT, component)));
        path.leading().filter(leading -> library.element(leading.address()).filter(Cause.class::isInstance).isPresent())
                .ifPresent(leading -> all.add(fields.of(What.CAUSE, leading.address())));
        return all;
    }
}
