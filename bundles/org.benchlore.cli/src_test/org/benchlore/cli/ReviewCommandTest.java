// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

import org.benchlore.check.review.PackEntry;
import org.benchlore.check.review.PackRegister;
import org.benchlore.workshop.Places;
import org.benchlore.workshop.Workshop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.google.gson.JsonParser;

/** The commands review and compare, over a copy of the demonstration library. */
class ReviewCommandTest {

    private static final String ACTUATOR = "renew-pto-actuator";

    @TempDir
    Path home;

    private Path file;
    private int exit;
    private String error;

    @BeforeEach
    void find() throws Exception {
        file = KnownHome.in(home.resolve("home")).demonstration().resolve("procedures/" + ACTUATOR + ".xmi");
    }

    private Workshop workshop() {
        return new Workshop(Places.below(home.resolve("home")));
    }

    private String run(String... arguments) {
        var out = new StringWriter();
        var err = new StringWriter();
        exit = new Commands(workshop(), new PrintWriter(out), new PrintWriter(err)).run(arguments);
        error = err.toString();
        return out.toString();
    }

    private void reviewAndChange() throws Exception {
        run("review", ACTUATOR, "--by", "oda-brekkan", "--on", "2026-11-20");
        assertEquals(Exit.DONE, exit, error);
        Files.writeString(file, Files.readString(file).replace("torque=\"22 N·m\"", "torque=\"24 N·m\""));
    }

    @Test
    void aReviewIsWrittenWithNameDayAndSum() throws Exception {
        assertEquals(ACTUATOR + " is reviewed by Oda Brekkan." + System.lineSeparator(),
                run("review", ACTUATOR, "--by", "Oda Brekkan", "--on", "2026-11-20"));
        assertTrue(Files.readString(file).matches("(?s).*reviewedOn=\"2026-11-20\"\\s+reviewedHash=\"[0-9a-f]{64}\".*"));
    }

    @Test
    void whatWasChangedSinceIsToldInWords() throws Exception {
        reviewAndChange();
        var out = run("review", ACTUATOR);
        assertEquals(Exit.DONE, exit, error);
        assertTrue(out.contains("changed since its review"), out);
        assertTrue(out.contains("fastening Actuator to take-off, step 8, from 22 to 24 N·m"), out);
    }

    @Test
    void compareTellsTheSameAndSpeaksJson() throws Exception {
        reviewAndChange();
        var json = JsonParser.parseString(run("compare", ACTUATOR, "--json")).getAsJsonObject();
        assertEquals(Exit.DONE, exit, error);
        assertEquals(1, json.getAsJsonArray("differences").size());
        assertTrue(json.get("differences").getAsString().endsWith("from 22 to 24 N·m"), json.toString());
    }

    @Test
    void anOlderCopyOfTheFileIsComparedAndItsReferencesAreTheSame() throws Exception {
        var older = home.resolve("older.xmi");
        Files.writeString(older, Files.readString(file).replace("torque=\"22 N·m\"", "torque=\"20 N·m\""));
        var out = run("compare", older.toString(), ACTUATOR);
        assertEquals(Exit.DONE, exit, error);
        assertEquals(2, out.lines().count(), out);
        assertTrue(out.endsWith("from 20 to 22 N·m" + System.lineSeparator()), out);
    }

    @Test
    void alikeIsExitOne() {
        var out = run("compare", ACTUATOR, file.toString());
        assertEquals(Exit.EMPTY, exit, error);
        assertTrue(out.contains("does not differ from"), out);
    }

    @Test
    void sumsAreWrittenOnceForAllThatSayReviewed() throws Exception {
        Files.writeString(file, Files.readString(file).replaceFirst("\\s+reviewedHash=\"\\w+\"", ""));
        run("review", "--sums");
        assertEquals(Exit.DONE, exit, error);
        assertTrue(Files.readString(file).contains("reviewedHash="));
        run("review", "--sums");
        assertEquals(Exit.EMPTY, exit, error);
    }

    @Test
    void sumsLeaveOutWhatWasChangedAndSaySo() throws Exception {
        run("review", "--sums");
        Files.writeString(file, Files.readString(file).replace("torque=\"22 N·m\"", "torque=\"24 N·m\""));
        run("review", "--sums");
        assertEquals("benchlore: procedures/" + ACTUATOR + ".xmi was changed since its review: have it reviewed again\n", error);
    }

    @Test
    void packsThatCarryItAreNamed() throws Exception {
        PackRegister.in(workshop().demonstration()).record(new PackEntry(LocalDate.of(2026, 11, 21), "For Ines", "/stick",
                List.of(ACTUATOR + "@3")));
        var json = JsonParser.parseString(run("review", ACTUATOR, "--json")).getAsJsonArray().get(0).getAsJsonObject();
        assertEquals("[{\"on\":\"2026-11-21\",\"title\":\"For Ines\",\"out\":\"/stick\",\"revision\":\"3\"}]",
                json.get("packs").toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "review | Name one or more procedures; 'find TEXT --kind procedure' finds ids",
        "review nothing | There is no procedure 'nothing'; 'find TEXT --kind procedure' finds ids",
        "review pto-actuator --by oda-brekkan | There is no procedure 'pto-actuator'; near it: renew-pto-actuator; 'find TEXT --kind procedure' finds ids",
        "review renew-pto-actuator --by jory-pask | The author cannot review it: have somebody else do it",
        "review renew-pto-actuator --by nobody | There is no 'nobody' in the shop; there are oda-brekkan, jory-pask, tamsin-orle, "
                + "wim-desselaar, ines-quorn, bram-tolvey, sunniva-hale",
        "review --sums --by oda-brekkan | --sums is for what was reviewed before, --by for a review now: give one of them",
        "review read-codes --on yesterday --by oda-brekkan | Invalid value for option '--on': 'yesterday' is no day: "
                + "write it as 2026-11-25; see 'benchlore review --help'",
        "review read-codes --sums --sums | option '--sums' should be specified only once; see 'benchlore review --help'",
        "compare nothing read-codes | There is no element and no file 'nothing'; 'find TEXT' finds ids",
        "compare read-codes pto-actuator | 'Read and write down the fault codes' is a procedure, 'Engagement actuator' a part: "
                + "only elements of one kind are compared",
        "compare pto-actuator | 'Engagement actuator' is no procedure, and only procedures are reviewed: "
                + "name a second id or file to compare it with",
    })
    void wrongInputIsOneLineAndExitTwo(String line, String said) {
        run(line.split(" "));
        assertEquals("benchlore: " + said + "\n", error);
        assertEquals(Exit.BAD_ARGUMENT, exit);
    }

    @Test
    void aFileThatHoldsNoElementIsRefused() throws Exception {
        var other = Files.writeString(home.resolve("letter.txt"), "Dear Ines");
        run("compare", other.toString(), ACTUATOR);
        assertEquals(Exit.BAD_ARGUMENT, exit);
        assertTrue(error.startsWith("benchlore: " + other + " holds no element of a library: "), error);
        assertEquals(1, error.lines().count());
    }
}
