// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static java.util.Map.entry;

import java.util.Map;

import org.benchlore.model.Answer;
import org.benchlore.model.CodeScheme;
import org.benchlore.model.ComebackReason;
import org.benchlore.model.DocumentKind;
import org.benchlore.model.Frequency;
import org.benchlore.model.JobState;
import org.benchlore.model.MeterKind;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.RoundKind;
import org.benchlore.model.Rounding;
import org.benchlore.model.TrainingLevel;
import org.benchlore.model.Verdict;
import org.eclipse.emf.common.util.Enumerator;

/** Words for the literals of notes, jobs, codes, documents and the shop. */
final class RecordWords {

    static final Map<Enumerator, String> WORDS = Map.ofEntries(
            entry(Frequency.OFTEN, "often"),
            entry(Frequency.SOMETIMES, "sometimes"),
            entry(Frequency.RARELY, "rarely"),
            entry(CodeScheme.J2012, "SAE J2012 / ISO 15031-6"),
            entry(CodeScheme.ISO14229, "ISO 14229, three bytes"),
            entry(CodeScheme.J1939, "SAE J1939, SPN and FMI"),
            entry(CodeScheme.MAKER, "the maker's own"),
            entry(DocumentKind.BULLETIN, "bulletin"),
            entry(DocumentKind.RECALL, "recall"),
            entry(DocumentKind.MANUAL_SECTION, "manual section"),
            entry(DocumentKind.PARTS_LIST, "parts list"),
            entry(DocumentKind.DRAWING, "drawing"),
            entry(DocumentKind.OTHER, "other document"),
            entry(NoteStatus.UNSORTED, "not sorted yet"),
            entry(NoteStatus.SUSPECTED, "suspected"),
            entry(NoteStatus.SEEN, "seen to happen"),
            entry(NoteStatus.HELD, "the fix held"),
            entry(NoteStatus.RULED_OUT, "looked like this, was not"),
            entry(NoteStatus.SUPERSEDED, "superseded"),
            entry(RoundKind.STRIP, "strip"),
            entry(RoundKind.TEACH_IN_FAILED, "teach-in failed"),
            entry(RoundKind.STRIP_AGAIN, "strip again"),
            entry(RoundKind.VERIFY, "verify"),
            entry(RoundKind.HAND_BACK, "hand back"),
            entry(JobState.OPEN, "open"),
            entry(JobState.WAITING_FOR_PARTS, "waiting for parts"),
            entry(JobState.WAITING_FOR_ANSWER, "waiting for an answer"),
            entry(JobState.CLOSED, "closed"),
            entry(ComebackReason.SAME_FAULT, "same fault"),
            entry(ComebackReason.PART_LEFT_IN, "a part that was left in"),
            entry(ComebackReason.OUR_WORK, "our work"),
            entry(ComebackReason.NEW_PART_BAD, "new part bad"),
            entry(ComebackReason.UNRELATED, "unrelated"),
            entry(TrainingLevel.WATCHED, "watched"),
            entry(TrainingLevel.DONE_WITH, "done with somebody"),
            entry(TrainingLevel.DONE_ALONE, "done alone"),
            entry(Answer.OFFERED, "offered, no answer yet"),
            entry(Answer.ACCEPTED, "accepted"),
            entry(Answer.DECLINED, "declined"),
            entry(Verdict.PASS, "within limits"),
            entry(Verdict.FAIL, "outside limits"),
            entry(MeterKind.KM, "kilometres"),
            entry(MeterKind.HOURS, "hours"),
            entry(MeterKind.STARTS, "starts"),
            entry(Rounding.SMALLEST_COIN, "to the smallest coin"),
            entry(Rounding.TENTH, "to a tenth"),
            entry(Rounding.WHOLE, "to a whole amount"));

    private RecordWords() {
    }
}
