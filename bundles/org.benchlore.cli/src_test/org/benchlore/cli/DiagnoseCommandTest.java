// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.regex.Pattern;

import org.benchlore.workshop.Places;
import org.benchlore.workshop.Workshop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.google.gson.JsonParser;

class DiagnoseCommandTest {

    private static final Pattern STATISTICS = Pattern.compile("(?i)probab|posterior|prior\\b|likelihood|bayes|confidence|expected|odds|%");

    @TempDir
    Path home;

    @BeforeEach
    void knowTheDemonstration() {
        KnownHome.in(home.resolve("home"));
    }

    private record Run(int exit, String out, String err) {
    }

    private Run run(String... arguments) {
        var out = new StringWriter();
        var err = new StringWriter();
        int exit = new Commands(new Workshop(Places.below(home.resolve("home"))), new PrintWriter(out),
                new PrintWriter(err)).run(arguments);
        return new Run(exit, out.toString(), err.toString());
    }

    @Test
    void afterThePackTheActuatorIsFirstAndTheCautionStandsLast() {
        var run = run("diagnose", "dravholm-hl26", "--code", "4C17", "--after", "renew-pto-clutch-pack");
        assertEquals(Exit.DONE, run.exit());
        assertTrue(run.out().contains("1. Actuator tilts and stops short: most likely"), run.out());
        assertTrue(run.out().contains("seen in 3 of about 40 of ours"), run.out());
        assertTrue(run.out().contains("When all is new and it still fails"), run.out());
        assertTrue(run.out().contains("What killed it, and what did it kill?"), run.out());
        assertTrue(run.out().contains("not for use on a real machine"), run.out());
        assertTrue(run.out().replaceAll("\\s+", " ").strip()
                .endsWith("local rules and a licensed person decide."), run.out());
        assertEquals("", run.err());
    }

    @Test
    void nobodyReadsAWordOfStatistics() {
        var run = run("diagnose", "lorry-17", "--code", "4C17", "--symptom", "Hook arm slows down under load", "--after",
                "renew-pto-clutch-pack");
        var found = STATISTICS.matcher(run.out());
        assertFalse(found.find(), () -> found.group());
    }

    @Test
    void aCheckIsAnsweredAsTheListSays() {
        var before = run("diagnose", "dravholm-hl26", "--code", "4C17");
        assertTrue(before.out().contains("--answer step-r7mt=RESULT"), before.out());
        var after = run("diagnose", "dravholm-hl26", "--code", "4C17", "--answer", "step-r7mt=No bubble in the second round");
        assertFalse(after.out().contains("1. Air in the engagement circuit"), after.out());
        assertTrue(after.out().contains("Answered"), after.out());
    }

    @Test
    void nothingKnownIsExitOneWithTheChain() {
        var run = run("diagnose", "dravholm-hl26", "--symptom", "hook arm turns sideways");
        assertEquals(Exit.EMPTY, run.exit());
        assertTrue(run.out().contains("Nothing is known here of: hook arm turns sideways"), run.out());
        assertTrue(run.out().contains("All that makes it work: The hook arm lifts"), run.out());
    }

    @Test
    void whereNothingIsKnownWhatComesNearestIsNamed() {
        var run = run("diagnose", "van-02", "van", "shakes", "at", "traffic", "lights");
        assertEquals(Exit.EMPTY, run.exit());
        assertTrue(run.out().contains("- 'Shakes at idle': Plate of the recirculation valve sticks"), run.out());
        var json = JsonParser.parseString(run("diagnose", "van-02", "van shakes at traffic lights", "--json").out()).getAsJsonObject();
        var nearest = json.getAsJsonArray("findings").get(0).getAsJsonObject().getAsJsonArray("nearest");
        assertTrue(nearest.asList().stream().anyMatch(near -> near.getAsJsonObject().get("words").getAsString().equals("Shakes at idle")));
    }

    @Test
    void aComplaintIsTypedAsItIsSaidWithTheCodeInIt() {
        var run = run("diagnose", "lorry-17", "pto", "wont", "engage", "4c17");
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertTrue(run.out().contains("pto wont engage"), run.out());
        assertFalse(run.out().contains("engage 4c17"), run.out());
        assertTrue(run.out().contains("4C17: "), run.out());
    }

    @Test
    void jsonHoldsCausesChecksLadderAndPath() {
        var run = run("diagnose", "lorry-17", "--code", "4C17", "--after", "renew-pto-clutch-pack", "--json");
        var json = JsonParser.parseString(run.out()).getAsJsonObject();
        var first = json.getAsJsonArray("causes").get(0).getAsJsonObject();
        assertEquals("machines/dravholm-hl26.xmi#cause-actuator-sticks", first.get("address").getAsString());
        assertEquals(4, first.get("cases").getAsInt());
        assertTrue(first.get("chance").getAsDouble() > 0.9);
        assertEquals(5, json.getAsJsonObject("ladder").getAsJsonArray("rungs").size());
        assertEquals("BAD", json.getAsJsonObject("ladder").getAsJsonObject("next").get("state").getAsString());
        assertTrue(json.getAsJsonObject("checks").get("expectedMinutes").getAsDouble() > 0);
        assertTrue(json.getAsJsonObject("path").get("text").getAsString().contains("9.6 mm"));
        assertTrue(json.get("invented").getAsBoolean());
        assertTrue(json.get("caution").getAsString().startsWith("Check against"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"nobody --code 4C17 | There is no machine or unit 'nobody'",
        "dravholm-hl26 | Nothing was asked", "dravholm-hl26 --code 4C17 --answer nonsense | 'nonsense' is no answer: write CHECK=RESULT",
        "dravholm-hl26 --code 4C17 --answer none=x | There is no check 'none'",
        "dravholm-hl26 --code 4C17 --after nothing | There is no procedure 'nothing'"})
    void aWrongArgumentIsOneLineThatSaysWhatToDo(String arguments, String words) {
        var run = run(("diagnose " + arguments).split(" "));
        assertEquals(Exit.BAD_ARGUMENT, run.exit());
        assertTrue(run.err().startsWith("benchlore: " + words), run.err());
        assertEquals(1, run.err().strip().lines().count());
    }
}
