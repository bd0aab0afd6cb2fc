// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

import org.benchlore.workshop.Places;
import org.benchlore.workshop.Workshop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class AddingCommandTest {

    /** Words of statistics that no reader of the shop should meet. */
    private static final Pattern STATISTICS = Pattern.compile("\\b(probabilit|prior|posterior|expected|expectation|mean value|"
            + "distribution|interval|confidence|likelihood|beta|weibull|estimate|variance|percentile)", Pattern.CASE_INSENSITIVE);

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

    private int run(String arguments) {
        return new Commands(new Workshop(Places.below(home.resolve("home"))), new PrintWriter(out), new PrintWriter(err))
                .run(arguments.split(" "));
    }

    private static JsonObject proposal(JsonObject json, String id) {
        for (var one : json.getAsJsonArray("proposals")) {
            if (one.getAsJsonObject().get("id").getAsString().equals(id)) {
                return one.getAsJsonObject();
            }
        }
        throw new AssertionError("no " + id + " in " + json);
    }

    private JsonObject json() {
        return JsonParser.parseString(out.toString()).getAsJsonObject();
    }

    /** The note's 3 of about 40 with two jobs since, of which lorry 25's came apart again: 4 of about 42. */
    @Test
    void theDemonstrationStoryOffersTheActuatorWithItsCount() {
        assertEquals(0, run("adding lorry-17 renew-pto-clutch-pack --on 2026-11-25"), err::toString);
        var text = out.toString().replaceAll("\\s+", " ");
        assertTrue(text.contains("The customer pays: extra if done now 404.16, if it must come apart again 3131.00"), text);
        assertTrue(text.contains("with the one before it: about 1 in 11 of ours (4 of about 42)"), text);
        assertTrue(text.contains("not for use on a real machine"), text);
        assertTrue(text.contains("Have it on the shelf and decide on sight"), text);
    }

    @Test
    void whatIsReadHoldsNoWordsOfStatistics() {
        run("adding lorry-21 renew-pto-clutch-pack --on 2026-11-25");
        assertFalse(STATISTICS.matcher(out.toString()).find(), out::toString);
    }

    /** Leaving: (0.75 + 1) / (10 + 2) × 3131.00 = 456.60; the note's own count stays 3. */
    @Test
    void jsonHoldsEveryFigureAndWhereItComesFrom() {
        assertEquals(0, run("adding lorry-21 renew-pto-clutch-pack --on 2026-11-25 --keep 3 --json"), err::toString);
        var one = proposal(json(), "renew-pto-actuator");
        assertEquals(25, one.get("extraMinutes").getAsInt());
        assertEquals("404.16", one.getAsJsonObject("figures").getAsJsonObject("extra").get("value").getAsString());
        assertEquals("the shop's page", one.getAsJsonObject("figures").getAsJsonObject("comeback-cost").get("from").getAsString());
        assertEquals(3, one.getAsJsonObject("seen").getAsJsonObject("leftIn").get("noteCount").getAsInt());
        assertEquals("456.60", one.getAsJsonObject("customer").getAsJsonObject("ways").get("leave").getAsString());
        assertEquals("2029-11-25", json().get("keptUntil").getAsString());
    }

    @Test
    void aFigureOfOnesOwnChangesTheSums() {
        assertEquals(0, run("adding lorry-21 renew-pto-clutch-pack --on 2026-11-25 --json --assume renew-pto-actuator:day-out=350"),
                err::toString);
        var one = proposal(json(), "renew-pto-actuator");
        assertEquals("5231.00", one.getAsJsonObject("customer").get("apartLater").getAsString());
        assertTrue(one.getAsJsonObject("figures").getAsJsonObject("day-out").get("byHand").getAsBoolean());
    }

    @Test
    void nothingWithAReasonIsAnEmptyResult() {
        assertEquals(1, run("adding sweeper-3 renew-sweeper-fan-bearings"), err::toString);
        assertTrue(out.toString().contains("Nothing that has a reason"), out::toString);
    }

    @Test
    void thePageHoldsTheChartsAndFetchesNothing() throws Exception {
        var page = home.resolve("adding.html");
        assertEquals(0, run("adding lorry-21 renew-pto-clutch-pack --on 2026-11-25 --page " + page), err::toString);
        var html = Files.readString(page);
        assertTrue(html.contains("how many bring the unit back"), html);
        assertFalse(html.contains("<script") || html.contains("src=\"http"), html);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"adding lorry-99 renew-pto-actuator|no machine or unit 'lorry-99'",
            "adding lorry-17 nothing|no procedure 'nothing'", "adding lorry-17 renew-pto-actuator --open nothing|no access 'nothing'",
            "adding lorry-17 renew-pto-actuator --done nothing|no procedure 'nothing'",
            "adding code-4c17 renew-pto-actuator|neither a machine nor a unit",
            "adding lorry-17 renew-pto-clutch-pack --keep 0|Give 1 or more",
            "adding lorry-17 renew-pto-clutch-pack --keep long|--keep",
            "adding lorry-17 renew-pto-clutch-pack --assume nonsense|PROCEDURE:FIGURE=VALUE",
            "adding lorry-17 renew-pto-clutch-pack --assume nothing:extra=1|not among what could be added",
            "adding lorry-17 renew-pto-clutch-pack --assume renew-pto-actuator:nothing=1|no figure 'nothing'",
            "adding lorry-17 renew-pto-clutch-pack --assume renew-pto-actuator:extra=much|is no number",
            "adding lorry-17 renew-pto-clutch-pack --assume renew-pto-actuator:extra=-1|give 0 or more",
            "adding lorry-17 renew-pto-clutch-pack --assume renew-pto-actuator:comes-back=101|from 0 to 100",
            "sheet lorry-17 renew-pto-clutch-pack|--out", "sheet lorry-17 renew-pto-clutch-pack --out sheet.odt|end it in .txt or .html",
            "sheet lorry-17 renew-pto-clutch-pack --out x.txt --declined nothing|no procedure 'nothing'",
            "sheet lorry-17 renew-pto-clutch-pack --out x.txt --revised-from nowhere.txt|cannot be read",
            "sheet lorry-17 renew-pto-clutch-pack --out x.txt --photo nowhere.jpg|cannot be read",
            "sheet lorry-99 renew-pto-clutch-pack --out x.txt|no machine or unit 'lorry-99'", "adding lorry-17|PROCEDURE"})
    void whatCannotBeAnsweredIsOneLineThatNamesIt(String arguments, String words) {
        assertEquals(2, run(arguments));
        assertEquals("", out.toString());
        assertEquals(1, err.toString().lines().count(), err::toString);
        assertTrue(err.toString().contains(words), err::toString);
    }
}
