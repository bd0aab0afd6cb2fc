// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
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
import org.junit.jupiter.params.provider.CsvSource;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class PlanCommandTest {

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

    private JsonObject json() {
        return JsonParser.parseString(out.toString()).getAsJsonObject();
    }

    @Test
    void aPlanIsReadInTheTerminalAndSaysThatItIsInvented() {
        assertEquals(0, run("plan lorry-17 renew-pto-clutch-pack renew-pto-actuator --on 2026-11-25"), err::toString);
        var text = out.toString();
        assertTrue(text.contains("not for use on a real machine"), text);
        assertTrue(text.contains("a senior signs it"), text);
        assertTrue(text.contains("One visit saves"), text);
        assertTrue(text.contains("Tuesday 2026-12-01 08:20"), text);
        assertTrue(text.contains("Check against the manufacturer's data"), text);
    }

    @Test
    void jsonHoldsMinutesAsNumbersAndMoneyAsText() {
        assertEquals(0, run("plan lorry-17 renew-pto-clutch-pack renew-pto-actuator --on 2026-11-25 --json"), err::toString);
        assertEquals(885, json().getAsJsonObject("minutes").get("usual").getAsInt());
        assertEquals("3088.65", json().getAsJsonObject("price").get("total").getAsString());
        assertTrue(json().get("exact").getAsBoolean());
        assertEquals("save-pto-values", json().getAsJsonArray("items").get(0).getAsJsonObject().get("id").getAsString());
    }

    @Test
    void fromWhereTheMachineStandsItSaysWhatChanged() {
        assertEquals(0, run("plan lorry-14 renew-pto-actuator --open pto-unit-opened --done save-pto-values"
                + " --done renew-pto-clutch-pack --on 2026-11-25 --json"), err::toString);
        assertEquals(0, json().getAsJsonArray("opened").size());
        assertEquals(885, json().getAsJsonObject("firstPlan").getAsJsonObject("minutes").get("usual").getAsInt());
    }

    @Test
    void cardAndPictureAreWrittenAndNeverOverSomethingElse() throws IOException {
        var card = home.resolve("card.html");
        var picture = home.resolve("accesses.svg");
        var command = "plan lorry-17 renew-pto-clutch-pack --card " + card + " --picture " + picture;
        assertEquals(0, run(command), err::toString);
        var html = Files.readString(card);
        assertTrue(html.indexOf("Strong spring force") < html.indexOf("screw the spindle down"), "hazard before its step");
        assertTrue(html.contains("Height of the clutch pack: ____________   [ ] within"), "a box for a value");
        assertTrue(html.contains("Hub nut of the clutch: set to ____________   Wrench: "), "a box for a torque");
        assertTrue(Files.readString(picture).contains("comes free"));
        assertEquals(2, run(command));
        assertTrue(err.toString().contains("is not written over"), err::toString);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"plan lorry-99 renew-pto-actuator|no machine or unit 'lorry-99'",
            "plan lorry-17 nothing|no procedure 'nothing'", "plan lorry-17 renew-pto-actuator --open nothing|no access 'nothing'",
            "plan lorry-17 renew-sweeper-fan-bearings|is not for 'dravholm-hl26'",
            "plan lorry-17 renew-pto-actuator --done nothing|no procedure 'nothing'",
            "plan lorry-17 renew-pto-actuator --labour much|much", "plan lorry-17|PROCEDURE"})
    void whatCannotBePlannedIsOneLineThatNamesIt(String arguments, String words) {
        assertEquals(2, run(arguments));
        assertEquals("", out.toString());
        assertEquals(1, err.toString().lines().count(), err::toString);
        assertTrue(err.toString().contains(words), err::toString);
    }
}
