// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

import org.benchlore.workshop.Places;
import org.benchlore.workshop.Workshop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class CommandsTest {

    private static final String NOTE = "note-2025-learning-fails-on-a-fresh-install-k7m3";

    @TempDir
    Path home;

    @BeforeEach
    void knowTheDemonstration() {
        KnownHome.in(home.resolve("home"));
    }

    /** What one run of the command line did. */
    private record Run(int exit, String out, String err) {

        JsonObject json() {
            return JsonParser.parseString(out).getAsJsonObject();
        }
    }

    private Run run(String... arguments) {
        var out = new StringWriter();
        var err = new StringWriter();
        int exit = new Commands(new Workshop(Places.below(home.resolve("home"))), new PrintWriter(out),
                new PrintWriter(err)).run(arguments);
        return new Run(exit, out.toString(), err.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"learning fails on a fresh install", "4C17"})
    void theNoteIsTheFirstLine(String text) {
        var run = run("find", text);
        assertEquals(Exit.DONE, run.exit());
        assertTrue(run.out().startsWith("1. Learning fails on a fresh install"), run.out());
        assertTrue(run.out().contains("show " + NOTE), run.out());
        assertTrue(run.out().contains("not for use on a real machine"), run.out());
        assertEquals("", run.err());
    }

    @Test
    void wordsNeedNoQuotes() {
        assertEquals(run("find", "learning fails").out(), run("find", "learning", "fails").out());
    }

    @Test
    void findingNothingIsOneHelpfulLineAndExitOne() {
        var run = run("find", "zzzzqq");
        assertEquals(Exit.EMPTY, run.exit());
        assertOneLine(run, "nothing found for 'zzzzqq'");
        assertEquals("", run.out());
    }

    @Test
    void findSpeaksJson() {
        var json = run("find", "--json", "--limit", "2", "learning fails").json();
        assertEquals(2, json.getAsJsonArray("hits").size());
        var hit = json.getAsJsonArray("hits").get(0).getAsJsonObject();
        assertEquals(NOTE, hit.get("id").getAsString());
        assertEquals("note", hit.get("kind").getAsString());
        assertTrue(hit.get("invented").getAsBoolean());
        assertTrue(json.get("total").getAsInt() >= 2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"held", "HELD", "the fix held"})
    void aStatusNarrowsHoweverItIsWritten(String status) {
        var json = run("find", "--json", "--status", status, "actuator").json();
        assertTrue(json.get("total").getAsInt() > 0);
        json.getAsJsonArray("hits").forEach(hit ->
                assertEquals("HELD", hit.getAsJsonObject().get("status").getAsString()));
    }

    @Test
    void theCountsSayHowManyThereAre() {
        var run = run("find", "--counts", "actuator");
        assertTrue(run.out().lines().anyMatch(line -> line.startsWith("Kind: ") && line.contains("field note ")), run.out());
        var counts = run("find", "--json", "actuator").json().getAsJsonObject("counts");
        assertTrue(counts.getAsJsonObject("kind").get("note").getAsInt() > 0);
        assertTrue(counts.getAsJsonObject("machine").get("dravholm-hl26").getAsInt() > 0);
    }

    @Test
    void aMisspeltWordIsAskedBack() {
        var run = run("find", "vibartion");
        assertEquals(Exit.DONE, run.exit());
        assertTrue(run.out().contains("Did you mean 'vibration'?") || run.out().contains("(for vibartion)"), run.out());
    }

    @Test
    void findingNothingIsJsonTooWhereJsonIsAsked() {
        var run = run("find", "--json", "zzzzqq");
        assertEquals(Exit.EMPTY, run.exit());
        assertEquals(0, run.json().getAsJsonArray("hits").size());
    }

    @Test
    void aNoteAndAProcedureAreShown() {
        var note = run("show", NOTE);
        assertEquals(Exit.DONE, note.exit());
        assertTrue(note.out().contains("suspect hydraulic actuator"), note.out());
        var procedure = run("show", "renew-pto-clutch-pack");
        assertTrue(procedure.out().contains("N·m"), procedure.out());
        assertTrue(procedure.out().contains("not for use on a real machine"), procedure.out());
        assertTrue(procedure.out().contains("manufacturer"), procedure.out());
    }

    @Test
    void anInnerElementIsShownByItsAddress() {
        assertEquals(run("show", "dravholm-hl26").out(),
                run("show", "machines/dravholm-hl26.xmi#pto-actuator").out());
    }

    @Test
    void showSpeaksJson() {
        var json = run("show", "--json", NOTE).json();
        assertEquals("FieldNote", json.get("type").getAsString());
        assertEquals("SEEN", json.get("status").getAsString());
        assertEquals("machines/dravholm-hl26.xmi#pto-actuator", json.get("component").getAsString());
        assertEquals("20 min", json.getAsJsonArray("addWhileDoing").get(0).getAsJsonObject().get("extra").getAsString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"nosuch", "parts/nosuch.xmi#nosuch", "#", "a#", "../../etc/passwd#x", ""})
    void anUnknownIdIsExitTwo(String id) {
        var run = run("show", id);
        assertEquals(Exit.BAD_ARGUMENT, run.exit());
        assertEquals(1, run.err().lines().count(), run.err());
    }

    @Test
    void anIdThatIsNearlyRightIsHelpedOn() {
        assertOneLine(run("show", "clutch-pack"), "renew-pto-clutch-pack");
        assertOneLine(run("find", "--machine", "lorry-8", "seal"), "near it: lorry-08");
    }

    @Test
    void badArgumentsAreOneLineAndExitTwo() {
        assertBad("There is no command 'fnd'", "fnd", "x");
        assertBad("Unknown option: '--lmit'", "find", "--lmit", "3", "x");
        assertBad("--limit", "find", "--limit", "many", "x");
        assertBad("--limit must be 1 or more", "find", "--limit", "0", "x");
        assertBad("There is no kind 'recipe'", "find", "--kind", "recipe", "x");
        assertBad("There is no machine or unit 'tractor'", "find", "--machine", "tractor", "x");
        assertBad("There is no status 'proved': use one of", "find", "--status", "proved", "x");
        assertBad("--year must be four digits", "find", "--year", "last", "x");
        assertBad("Missing required parameter", "find");
        assertBad("is in use", "new", home.toString());
    }

    private void assertBad(String words, String... arguments) {
        run("find", "x");
        var run = run(arguments);
        assertEquals(Exit.BAD_ARGUMENT, run.exit(), run.err());
        assertOneLine(run, words);
    }

    private static void assertOneLine(Run run, String words) {
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains(words), run.err());
    }

    @Test
    void aMissingLibraryIsOneLineAndExitThree() {
        var run = run("find", "--library", home.resolve("nowhere").toString(), "x");
        assertEquals(Exit.UNREADABLE, run.exit());
        assertOneLine(run, "There is no library at");
    }

    @Test
    void aFolderThatIsNoLibraryIsExitThree() throws Exception {
        var folder = Files.createDirectories(home.resolve("empty"));
        assertEquals(Exit.UNREADABLE, run("find", "--library", folder.toString(), "x").exit());
    }

    @Test
    void aNewLibraryCanBeUsedAtOnce() {
        var folder = home.resolve("our shop").toString();
        assertEquals(Exit.DONE, run("new", folder, "--title", "Our shop").exit());
        var index = run("index", "--library", folder);
        assertEquals(Exit.DONE, index.exit());
        assertTrue(index.out().contains("Our shop: 2 files indexed, 0 problems"), index.out());
    }

    @Test
    void aCorruptFileIsOneLineWithItsPlaceAndTheRestIsFound() throws Exception {
        run("find", "x");
        var library = home.resolve("home/data/demonstration");
        Files.writeString(library.resolve("parts/broken.xmi"), "<book:Part\n  id=");
        var find = run("find", "4C17");
        assertEquals(Exit.DONE, find.exit());
        assertOneLine(find, "parts/broken.xmi:2:");
        var index = run("index");
        assertEquals(Exit.EMPTY, index.exit());
        assertTrue(index.out().contains("parts/broken.xmi:2: the file is no well-formed XML"), index.out());
        assertEquals("UNREADABLE", run("index", "--json").json().getAsJsonArray("problems").get(0).getAsJsonObject()
                .get("severity").getAsString());
    }

    @Test
    void aTruncatedIndexIsBuiltAgainWithOneLine() throws Exception {
        run("find", "x");
        try (var files = Files.walk(home.resolve("home/cache"))) {
            var index = files.filter(file -> file.toString().endsWith(".cfs")).findFirst().orElseThrow();
            Files.write(index, java.util.Arrays.copyOf(Files.readAllBytes(index), 100));
        }
        var run = run("find", "4C17");
        assertEquals(Exit.DONE, run.exit());
        assertOneLine(run, "The search index was damaged and has been built again");
        assertFalse(run("find", "4C17").err().contains("damaged"));
    }

    @Test
    void aCodeIsReadInEveryWayTheLibrarysOwnFirst() {
        var run = run("code", "4C17");
        assertEquals(Exit.DONE, run.exit());
        assertTrue(run.out().startsWith("4C17 "), run.out());
        assertTrue(run.out().contains("show code-4c17"), run.out());
        assertTrue(run.out().contains("C0C17"), run.out());
        var first = run("code", "--json", "520192/31").json().getAsJsonArray("readings").get(0).getAsJsonObject();
        assertEquals("SPN 520192 FMI 31", first.get("code").getAsString());
        assertEquals("spn-520192-fmi-31", first.getAsJsonArray("known").get(0).getAsString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"hello", "SPN 999999999 FMI 99", "!"})
    void whatIsNoCodeIsOneLineAndExitOne(String text) {
        var run = run("code", text);
        assertEquals(Exit.EMPTY, run.exit());
        assertEquals(1, run.err().lines().count(), run.err());
    }

    @Test
    void withoutACommandTheCommandsAreListed() {
        var run = run();
        assertEquals(Exit.DONE, run.exit());
        for (var command : new String[] {"find", "show", "code", "index", "new"}) {
            assertTrue(run.out().contains(command), run.out());
        }
    }
}
