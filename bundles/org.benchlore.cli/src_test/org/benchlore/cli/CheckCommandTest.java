// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

import com.google.gson.JsonParser;

class CheckCommandTest {

    private static final String ACTUATOR = "renew-pto-actuator";

    @TempDir
    Path home;

    @BeforeEach
    void knowTheDemonstration() {
        KnownHome.in(home.resolve("home"));
    }

    private int exit;
    private String error;

    private String run(String... arguments) {
        var out = new StringWriter();
        var err = new StringWriter();
        exit = new Commands(new Workshop(Places.below(home.resolve("home"))), new PrintWriter(out), new PrintWriter(err)).run(arguments);
        error = err.toString();
        return out.toString();
    }

    private void spoil() throws Exception {
        var folder = new Workshop(Places.below(home.resolve("home"))).demonstration();
        var file = folder.resolve("procedures/" + ACTUATOR + ".xmi");
        Files.writeString(file, Files.readString(file).replace("torque=\"22 N·m\"", "torque=\"220 N·m\""));
    }

    @Test
    void anErrorIsToldAtItsElementAndTheExitIsOne() throws Exception {
        spoil();
        var out = run("check", ACTUATOR).replaceAll("\\s+", " ");
        assertEquals(Exit.EMPTY, exit, error);
        assertTrue(out.contains("220 N·m at 'Actuator to take-off'"), out);
        assertTrue(out.contains("step 8"), out);
        assertTrue(out.contains("(torque-implausible)"), out);
    }

    @Test
    void anElementWithoutProblemsIsExitZero() {
        run("check", "read-codes");
        assertEquals(Exit.DONE, exit, error);
    }

    @Test
    void theWholeLibraryCountsWhatIsSilenced() {
        assertTrue(run("check").contains("silenced with a reason"));
    }

    @Test
    void checkSpeaksJson() throws Exception {
        spoil();
        var json = JsonParser.parseString(run("check", "--json", ACTUATOR)).getAsJsonObject();
        var problem = json.getAsJsonArray("problems").get(0).getAsJsonObject();
        assertEquals("procedures/renew-pto-actuator.xmi#fastening-actuator-r", problem.get("at").getAsString());
        assertEquals("ERROR", problem.get("severity").getAsString());
    }

    @Test
    void anUnknownIdIsOneLineAndExitTwo() {
        run("check", "nothing-here");
        assertEquals(Exit.BAD_ARGUMENT, exit);
        assertEquals("benchlore: There is no element 'nothing-here'; 'find TEXT' finds ids\n", error);
    }

    @Test
    void theRulesArePrinted() {
        assertTrue(run("check", "--rules").startsWith("# The rules"));
    }
}
