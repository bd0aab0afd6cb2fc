// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command line says of mistakes. */
class MainTest {

    private final StringWriter errors = new StringWriter();

    private int run(String... arguments) {
        return Main.commandLine().setErr(new PrintWriter(errors, true)).execute(arguments);
    }

    @Test
    void aFolderThatIsNoSetIsABadArgumentInOneLine(@TempDir Path folder) {
        assertEquals(2, run("rank", folder.toString()));
        assertTrue(errors.toString().startsWith("bench: "), errors::toString);
        assertEquals(1, errors.toString().lines().count());
    }

    @Test
    void tooFewNotesAreABadArgument() {
        assertEquals(2, run("speed", "--notes", "5"));
        assertEquals("bench: Give --notes 100 or more, and 1 or more for everything else", errors.toString().strip());
    }

    @Test
    void aPackOfNothingAndALibraryThatIsNoneAreBadArguments(@TempDir Path folder) {
        assertEquals(2, run("pack", "--procedures", "0"));
        assertEquals(2, run("pack", "--library", folder.toString()));
        assertEquals(2, errors.toString().lines().filter(line -> line.startsWith("bench: ")).count(), errors::toString);
    }
}
