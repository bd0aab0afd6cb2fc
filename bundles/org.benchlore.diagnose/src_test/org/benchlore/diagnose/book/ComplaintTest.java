// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

/** A driver types the code with the complaint. */
class ComplaintTest {

    private static Complaint read(String text) {
        return Complaint.read(text, word -> word.equalsIgnoreCase("4C17"));
    }

    @Test
    void aCodeTheLibraryKnowsIsTakenOut() {
        assertEquals(new Complaint("pto wont engage after new pack", List.of("4c17")), read("pto wont engage 4c17 after new pack"));
    }

    @Test
    void codesOfAStandardAreTakenOutWithTheWordThatNamesThem() {
        assertEquals(new Complaint("limp mode", List.of("P0299")), read("limp mode with code P0299"));
        assertEquals(new Complaint("slow", List.of("SPN 520192 FMI 31")), read("slow, SPN 520192 FMI 31"));
        assertEquals(new Complaint("", List.of("P0299", "4C17")), read("P0299 and 4C17"));
    }

    @Test
    void whatIsNoCodeStaysAsItWasTyped() {
        for (var text : List.of("slips at 60 to 70 km/h", "arm  sinks 5 mm, then holds", "stops after 1/2 h", "24V lamp on")) {
            assertEquals(new Complaint(text, List.of()), read(text), text);
        }
    }
}
