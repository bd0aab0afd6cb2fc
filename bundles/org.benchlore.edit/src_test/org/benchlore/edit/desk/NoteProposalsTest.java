// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.benchlore.edit.DemoCopy;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.SaveResult;
import org.benchlore.edit.Sessions;
import org.benchlore.edit.desk.Proposal.What;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.store.LibraryException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a note's text speaks of is proposed, and one edit puts it in. */
class NoteProposalsTest {

    @TempDir
    Path folder;

    private Sessions sessions;
    private NoteProposals proposals;
    private EditSession session;

    @BeforeEach
    void open() throws LibraryException {
        sessions = new DemoCopy(folder).sessions();
        proposals = new NoteProposals(sessions.library());
        session = sessions.create(Kind.NOTE, "", 2026);
    }

    private List<Proposal> of(String text) {
        session.execute(session.edits().text(session.element(), Literals.FIELD_NOTE__TEXT, text));
        return proposals.of(note());
    }

    private FieldNote note() {
        return (FieldNote) session.element();
    }

    private List<String> of(What what, String text) {
        return of(text).stream().filter(one -> one.what() == what)
                .map(one -> one.target().map(address -> address.id()).orElse(one.text())).toList();
    }

    private void accept(String text) {
        of(text).forEach(one -> session.execute(proposals.accept(session, one)));
    }

    @Test
    void aKnownCodeInAnyFormIsProposedAsTheLibrarysElement() {
        assertEquals(List.of("p0841-64", "code-4c17"), of(What.CODE, "P0841-64 was there, then 4c17 again"));
    }

    @Test
    void anUnknownCodeIsProposedAsItIsWritten() {
        assertEquals(List.of("P0999"), of(What.CODE_AS_WRITTEN, "Shows p0999 now"));
    }

    @Test
    void anOrdinaryNumberIsNoCode() {
        assertEquals(List.of(), of("Needed 45 N·m and 2026 hours").stream().filter(one -> one.what() != What.COMPONENT)
                .toList());
    }

    @Test
    void aUnitIsFoundByTheNumberPeopleSay() {
        assertEquals(List.of("lorry-17"), of(What.UNIT, "lorry 17 back again, arm slow"));
    }

    @Test
    void aBareNumberIsNoUnit() {
        assertEquals(List.of(), of(What.UNIT, "17 bar at the gauge"));
    }

    @Test
    void aComponentIsFoundByItsNameInTheText() {
        assertTrue(of(What.COMPONENT, "Engagement cylinder stuck half way").contains("pto-actuator"));
    }

    @Test
    void aComponentOfAnotherMachineIsNotProposedOnceTheUnitIsKnown() {
        var found = of(What.COMPONENT, "Sweeper 3: engagement cylinder stuck");
        assertFalse(found.contains("pto-actuator"), found.toString());
    }

    @Test
    void aSymptomIsProposedWhenAllItsTellingWordsStandInTheText() {
        assertEquals(List.of("Power take-off engages late"), of(What.SYMPTOM, "It engages so late, this power take off"));
    }

    @Test
    void acceptedProposalsStandInTheNoteAndAreNotProposedAgain() {
        accept("Lorry 14: 4C17 and P0999, power take-off engages late");
        assertEquals("dravholm-hl26", sessions.library().addressOf(note().getMachine()).orElseThrow().id());
        assertEquals(List.of("P0999"), note().getCodesAsWritten());
        assertEquals(List.of("Power take-off engages late"), note().getSymptoms());
        assertEquals(1, note().getCodes().size());
        assertEquals(List.of(), proposals.of(note()).stream().filter(one -> one.what() != What.COMPONENT).toList());
    }

    @Test
    void aUnitComesWithItsMachineAsOneEdit() {
        accept("Lorry 14 again");
        session.undo();
        assertEquals(null, note().getUnit());
        assertEquals(null, note().getMachine());
    }

    @Test
    void whatWasAcceptedIsSavedWhole() throws LibraryException {
        accept("Lorry 14: 4C17, engagement cylinder sticks, power take-off engages late");
        assertTrue(session.save() instanceof SaveResult.Saved);
        assertEquals(List.of(), sessions.library().problems());
    }

    @Test
    void anEmptyNoteHasNoProposals() {
        assertEquals(List.of(), proposals.of(note()));
    }
}
