// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;

import org.benchlore.workshop.Places;
import org.benchlore.workshop.Workshop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class CodeCommandTest {

    @TempDir
    Path home;

    private StringWriter out;
    private StringWriter err;

    @BeforeEach
    void emptyPaper() {
        KnownHome.in(home.resolve("home"));
        out = new StringWriter();
        err = new StringWriter();
    }

    private int run(String... arguments) {
        return new Commands(new Workshop(Places.below(home.resolve("home"))), new PrintWriter(out),
                new PrintWriter(err)).run(arguments);
    }

    private JsonObject json() {
        return JsonParser.parseString(out.toString()).getAsJsonObject();
    }

    /** Vectors worked out from SAE J2012 and ISO 15031-6; who defines what: from memory. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"p0741|P0741|J2012|STANDARD", "07 41 14|P0741-14|ISO14229|STANDARD",
            "B1318|B1318|J2012|MAKER", "u3fff-ff|U3FFF-FF|ISO14229|RESERVED", "520192-31|SPN 520192 FMI 31|J1939|MAKER",
            "b804030a|SPN 1208 FMI 3|J1939|STANDARD", "E-47|E-47|MAKER|MAKER"})
    void jsonTellsTheLikeliestReadingAndWhoDefinesIt(String text, String code, String scheme, String definedBy) {
        assertEquals(Exit.DONE, run("code", "--json", text));
        var first = json().getAsJsonArray("readings").get(0).getAsJsonObject();
        assertEquals(code, first.get("code").getAsString());
        assertEquals(scheme, first.get("scheme").getAsString());
        assertEquals(definedBy, first.get("definedBy").getAsString());
        assertFalse(json().has("problem"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"FMI 32|An FMI goes from 0 to 31, here it is 32: look at the code again.",
            "SPN 600000 FMI 3|An SPN goes from 0 to 524287, here it is 600000: look at the code again.",
            "B8 04 03 0|Each byte has two hex digits, here '0' stands alone: look at the code again."})
    void anOutOfRangeValueIsOnePlainSentenceInTextAndJson(String text, String sentence) {
        assertEquals(Exit.EMPTY, run("code", "--json", text));
        assertEquals(sentence, json().get("problem").getAsString());
        assertEquals("benchlore: " + sentence, err.toString().strip());
    }

    @Test
    void aRemarkThatTheReadingMakesIsNotSaidTwice() {
        assertEquals(Exit.DONE, run("code", "P07411"));
        assertEquals("", err.toString());
        assertEquals(2, out.toString().split("is not a failure type", -1).length, out.toString());
    }

    @Test
    void aRangeErrorIsSaidBesideOtherReadings() {
        assertEquals(Exit.DONE, run("code", "520192-32"));
        assertTrue(err.toString().contains("an FMI goes from 0 to 31, here it is 32"), err.toString());
        assertTrue(out.toString().contains("maker's own code"), out.toString());
    }

    @Test
    void tellsFailureTypeStatusAndDefinerInWords() {
        run("code", "P0741-14-09");
        assertTrue(out.toString().contains("circuit shorted to ground or open"), out.toString());
        assertTrue(out.toString().contains("Status 09: fails now; confirmed."), out.toString());
        assertTrue(out.toString().contains("The standard defines it"), out.toString());
    }
}
