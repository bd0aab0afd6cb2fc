// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.benchlore.page.TestBook.MAKE;
import static org.benchlore.page.TestBook.inner;
import static org.benchlore.page.TestBook.named;
import static org.benchlore.page.TestBook.to;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;

import org.benchlore.measure.Amount;
import org.benchlore.measure.Quantity;
import org.benchlore.model.FieldNote;
import org.benchlore.model.NoteStatus;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of a field note. */
class NotePageTest {

    private static final String ID = "note-2026-step-in-the-bore";

    @TempDir
    Path folder;

    private static FieldNote note() {
        var note = named(MAKE.createFieldNote(), ID, "Step in the bore");
        note.setText("New pack in, still stops.\n\nSee {part:actuator}.");
        note.setStatus(NoteStatus.SEEN);
        note.setDate(LocalDate.of(2026, 3, 27));
        note.setMachine(to(MAKE.createMachine(), "lifter"));
        note.setAuthor(to(MAKE.createPerson(), "shop.xmi", "jory"));
        note.setComponent(to(MAKE.createComponent(), "machines/lifter.xmi", "cylinder"));
        note.getCodes().add(to(MAKE.createFaultCode(), "code-4c17"));
        note.getCodesAsWritten().add("4C-99");
        note.setFinding("A step of 0.05 mm.");
        tally(note);
        var addition = MAKE.createAddition();
        addition.setWork(to(MAKE.createProcedure(), "renew-actuator"));
        addition.setExtra(Quantity.parse("20 min"));
        addition.setAlone(Quantity.parse("9 h"));
        addition.setPart(to(MAKE.createPart(), "actuator"));
        note.getAddWhileDoing().add(addition);
        return note;
    }

    private static void tally(FieldNote note) {
        var tally = MAKE.createTally();
        tally.setCount(3);
        tally.setOfAbout(40);
        tally.setSince(2021);
        var sighting = MAKE.createSighting();
        sighting.setDate(LocalDate.of(2022, 9, 13));
        sighting.setBy(to(MAKE.createPerson(), "shop.xmi", "jory"));
        tally.getSightings().add(sighting);
        note.setSeen(tally);
    }

    private TestBook book() {
        var shop = named(MAKE.createShop(), "shop", "Shop");
        shop.setCurrency("EUR");
        shop.getPeople().add(inner(MAKE.createPerson(), "jory", "Jory Pask"));
        var part = named(MAKE.createPart(), "actuator", "Actuator");
        part.setPrice(Amount.parse("286.00"));
        part.setPriceOn(LocalDate.of(2026, 5, 4));
        var machine = named(MAKE.createMachine(), "lifter", "Lifter");
        machine.getComponents().add(inner(MAKE.createComponent(), "cylinder", "Engagement cylinder"));
        var code = named(MAKE.createFaultCode(), "code-4c17", "Travel not reached");
        code.setCode("4C17");
        return new TestBook(folder).add(shop).add(part).add(machine).add(code);
    }

    @Test
    void aNoteReadsLikeThis() {
        assertEquals(GOLDEN, book().add(note()).text(ID));
    }

    private static final String GOLDEN = """
            Step in the bore
            ================

            Status: seen to happen

            New pack in, still stops.

            See Actuator [actuator].

            Field note: note-2026-step-in-the-bore
            Date:       2026-03-27
            Author:     Jory Pask
            Machine:    Lifter [lifter]
            Component:  Engagement cylinder

            Codes
            -----

            - 4C17: Travel not reached [code-4c17]
            - as written: 4C-99

            What was found
            --------------

            A step of 0.05 mm.

            Seen 3 of about 40 since 2021
            -----------------------------

            - 2022-09-13, Jory Pask

            Worth adding while it is open:
            This work       Extra if done   If it must      Part             Price without
                            now             come apart                       tax
                                            again
            --------------  --------------  --------------  ---------------  ---------------
            renew-actuator  20 min          9 h             Actuator         286.00 EUR
            (not in this                                    [actuator]       (2026-05-04)
            library)

            Procedures
            ----------

            - renew-actuator (not in this library)""";

    @ParameterizedTest
    @CsvSource({"3,40,2021,Seen 3 of about 40 since 2021", "3,,2021,Seen 3 times since 2021",
        "3,40,,Seen 3 of about 40", ",40,,Seen of about 40", ",,2021,Seen since 2021"})
    void aTallySaysOnlyWhatIsKnown(Integer count, Integer ofAbout, Integer since, String words) {
        var note = note();
        note.getSeen().setCount(count);
        note.getSeen().setOfAbout(ofAbout);
        note.getSeen().setSince(since);
        assertTrue(book().add(note).text(ID).contains("\n" + words + "\n---"));
    }

    @Test
    void anAdditionWithoutAPartShowsTheAuthorsPrice() {
        var note = note();
        note.getAddWhileDoing().get(0).setPart(null);
        note.getAddWhileDoing().get(0).setPartPrice(Amount.parse("97.10"));
        assertTrue(book().add(note).text(ID).contains("97.10 EUR"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Tighten to 60 N·m.", "60 Nm will do", "60 nm"})
    void aTorqueInATextCarriesTheStandingCaution(String text) {
        var note = note();
        note.setText(text);
        assertTrue(book().add(note).text(ID).contains("*** CAUTION: Check against"));
    }

    @Test
    void otherNotesOnTheSameCauseStandInOrderOfTrust() {
        var text = book().add(sameCause(ID, NoteStatus.SEEN))
                .add(sameCause("note-2026-ruled-out", NoteStatus.RULED_OUT))
                .add(sameCause("note-2026-held", NoteStatus.HELD)).text(ID);
        assertTrue(text.contains("""
                Field notes on the same cause
                -----------------------------

                - About note-2026-held [note-2026-held], the fix held
                - About note-2026-ruled-out [note-2026-ruled-out], looked like this, was not"""), text);
    }

    private static FieldNote sameCause(String id, NoteStatus status) {
        var note = named(MAKE.createFieldNote(), id, "About " + id);
        note.setText("Text");
        note.setStatus(status);
        note.setCause(to(MAKE.createCause(), "machines/lifter.xmi", "cause-sticks"));
        return note;
    }
}
