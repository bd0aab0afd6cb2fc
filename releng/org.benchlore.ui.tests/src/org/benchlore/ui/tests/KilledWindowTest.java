// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;

/**
 * A second window is killed while somebody types into it; this one is the next start. The keys are pressed by xdotool,
 * without which the test is left out.
 */
@EnabledIf("hasTypist")
class KilledWindowTest extends EditorTest {

    private static final long PATIENCE_MILLIS = 60_000;
    private static final String WORDS = "zzkilled in the middle of a";

    private Path scratch;

    @BeforeEach
    void open() throws Exception {
        scratch = Files.createTempDirectory("benchlore-killed").toRealPath();
    }

    /** Starts the program from the bundles of this test, with the same folder for drafts. */
    private Process start() throws IOException {
        var configuration = Files.createDirectories(scratch.resolve("configuration"));
        var own = Path.of(URI.create(System.getProperty("osgi.configuration.area").replace(" ", "%20")));
        Files.copy(own.resolve("config.ini"), configuration.resolve("config.ini"));
        var launcher = System.getProperty("java.class.path").split(File.pathSeparator)[0];
        var command = List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Djava.awt.headless=true",
                "-Dbenchlore.home=" + System.getProperty("benchlore.home"), "-jar", launcher,
                "-install", own.getParent().toString(), "-configuration", configuration.toString(),
                "-data", scratch.resolve("data").toString(), "-application", "org.benchlore.app.application",
                "-product", "org.benchlore.app.product", "-nosplash", library.file("").toString());
        return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(scratch.resolve("out").toFile()).start();
    }

    /** What this window does while the other one has the keyboard: nothing. */
    private void waitForOther(String what, Check check) throws IOException {
        long end = System.currentTimeMillis() + PATIENCE_MILLIS;
        while (!check.holds()) {
            assertTrue(System.currentTimeMillis() < end, () -> "Waited in vain until " + what + ": " + out());
            window.workFor(200);
        }
    }

    static boolean hasTypist() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, "xdotool")));
    }

    /** Presses keys in whatever window has the keyboard. */
    private void press(String... arguments) throws Exception {
        var command = new ArrayList<String>(List.of("xdotool"));
        command.addAll(List.of(arguments));
        assertEquals(0, new ProcessBuilder(command).start().waitFor());
    }

    private interface Check {
        boolean holds() throws IOException;
    }

    private String out() {
        try {
            return Files.readString(scratch.resolve("out"));
        } catch (IOException e) {
            return e.toString();
        }
    }

    private boolean isDrafted(Path drafts) throws IOException {
        if (!Files.isDirectory(drafts)) {
            return false;
        }
        try (var files = Files.walk(drafts)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                if (new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1).contains(WORDS)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void whatWasTypedIsOfferedAfterTheWindowWasKilled() throws Exception {
        var folder = library.file("");
        var drafts = LibraryCopy.session().workshop().places().draftsOf(folder);
        LibraryCopy.session().close();
        window.waitUntil("it is closed", () -> LibraryCopy.session().current().isEmpty());
        var other = start();
        try {
            waitForOther("the other window has the keyboard", () -> other.isAlive()
                    && Files.exists(scratch.resolve("data/.metadata")) && Display.getCurrent().getActiveShell() == null);
            window.workFor(8_000);
            press("key", "ctrl+n");
            window.workFor(2_500);
            press("key", "Return");
            window.workFor(4_000);
            press("type", "--delay", "30", WORDS);
            window.screenshot("edit-killed-typing");
            waitForOther("there is a draft", () -> isDrafted(drafts));
            press("type", " word");
        } finally {
            other.destroyForcibly().waitFor();
        }
        assertFalse(other.isAlive());
        window.activate();
        LibraryCopy.session().open(folder);
        var words = window.find("recovery.draft.0", Label.class);
        assertTrue(words.getText().contains("never saved"), words.getText());
        window.screenshot("edit-killed");
        edit.click("recovery.restore.0");
        window.waitUntil("the editor shows it", () -> window.has("FieldNote.text")
                && edit.text("FieldNote.text").getText().startsWith(WORDS));
        edit.save();
        assertEquals(0, EditDriver.editing().drafts().size());
    }
}
