// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.benchlore.model.BookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a note is called that nobody gave a title. */
class ElementTitleTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            grease the pin. the left one first | grease the pin. the left one first
            Pump on six singing like a kettle every morning and gone by ten. Took the breather off the tank and it stopped | Pump on six singing like a kettle every morning and gone by ten
            it hung in box 2. WHO HAS THE SLOTTED SOCKET FOR THE INJECTION LINES? I want it back before Friday comes | it hung in box 2. WHO HAS THE SLOTTED SOCKET FOR THE INJECTION LINES?
            Leak-off is only 1.9 so the motor is fine, and the seal is what lets it through when the oil is hot enough | Leak-off is only 1.9 so the motor is fine …
            order two clamps with every exhaust hose because the old ones are done for as soon as you look at them | order two clamps with every exhaust hose because the old ones are done for as …
            """)
    void aNoteWithoutATitleIsCalledByItsFirstSentenceOrAClause(String text, String title) {
        var note = BookFactory.eINSTANCE.createFieldNote();
        note.setText(text + "\nand a second line");
        assertEquals(title, ElementTitle.of(note));
    }

    @Test
    void aLineWithoutABlankIsCutWhereItMust() {
        var note = BookFactory.eINSTANCE.createFieldNote();
        note.setText("x".repeat(200));
        assertEquals("x".repeat(80) + " …", ElementTitle.of(note));
    }

    @Test
    void anEmptyNoteIsCalledByItsId() {
        var note = BookFactory.eINSTANCE.createFieldNote();
        note.setId("note-2026-empty-aaaa");
        note.setText(" \n ");
        assertEquals("note-2026-empty-aaaa", ElementTitle.of(note));
    }
}
