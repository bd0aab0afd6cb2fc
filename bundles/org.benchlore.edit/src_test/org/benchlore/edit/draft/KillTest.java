// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;

import org.benchlore.edit.DemoCopy;
import org.benchlore.edit.Sessions;
import org.benchlore.measure.Quantity;
import org.benchlore.model.FieldNote;
import org.benchlore.store.FileProblem;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed in the middle of writing loses nothing but what was typed since the last draft. */
class KillTest {

    private static final int KILLS = 50;
    private static final int LONGEST_LIFE = 150;
    private static final String NOTE = "notes/2026/note-2026-sweeper-belt-squeals-y4cd.xmi";
    private static final Pattern NUMBER = Pattern.compile("(?:safe|edit) ([0-9]+)");

    @TempDir
    Path folder;

    @Test
    void fiftyKillsLoseNothingButTheLastKeystrokes() throws Exception {
        var demo = small();
        var random = new Random(50);
        int safe = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            int told = runAndKill(demo, random.nextInt(LONGEST_LIFE), safe + 1);
            int kept = kept(demo);
            assertTrue(kept >= told, "kill " + kill + ": told that " + told + " is safe, found " + kept);
            assertTrue(kept <= told + 1, "kill " + kill + ": told that " + told + " is safe, found " + kept);
            safe = kept;
        }
        assertTrue(safe > KILLS, "only " + safe + " edits were made");
    }

    /** A library of few files, so that each life begins soon. */
    private DemoCopy small() throws IOException {
        var demo = new DemoCopy(folder);
        try (var files = Files.walk(demo.root())) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var path = demo.root().relativize(file).toString().replace('\\', '/');
                if (!path.startsWith("machines/") && !path.startsWith("units/") && !path.equals("shop.xmi")
                        && !path.equals(NOTE)) {
                    Files.delete(file);
                }
            }
        }
        return demo;
    }

    /** Starts the loop, kills it a while after it began to edit, and returns the last number it called safe. */
    private int runAndKill(DemoCopy demo, int life, int from) throws IOException, InterruptedException {
        var log = Files.createTempFile(folder, "told", ".txt");
        var process = start(demo, log, from);
        long patience = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        while (!text(log).contains("safe") && process.isAlive() && System.nanoTime() < patience) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        assertTrue(process.isAlive() && text(log).contains("safe"), () -> "the loop ended by itself: " + text(log));
        TimeUnit.MILLISECONDS.sleep(life);
        process.destroyForcibly().waitFor();
        return last(text(log));
    }

    private Process start(DemoCopy demo, Path log, int from) throws IOException {
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        var command = List.of(java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-cp",
                classPath(), EditLoop.class.getName(),
                demo.root().toString(), folder.resolve("cache").toString(), folder.resolve("drafts").toString(), NOTE,
                Integer.toString(from));
        try {
            return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
        } catch (IOException e) {
            return abort("No Java could be started here: " + e.getMessage());
        }
    }

    /** That of this process, and where the classes lie if they came from a class loader of the test runner's own. */
    private static String classPath() throws IOException {
        var path = new TreeSet<String>(List.of(System.getProperty("java.class.path")));
        for (var type : List.of(EditLoop.class, Drafts.class, Library.class, FieldNote.class, Quantity.class,
                EObject.class, Command.class, needed("org.eclipse.emf.ecore.xmi.XMIResource"), EditingDomain.class, ChangeDescription.class,
                IProgressMonitor.class, needed("org.eclipse.osgi.service.debug.DebugOptionsListener"))) {
            path.add(Path.of(URI.create(type.getProtectionDomain().getCodeSource().getLocation().toString())).toString());
        }
        return String.join(File.pathSeparator, path);
    }

    private static Class<?> needed(String name) throws IOException {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new IOException("The class path of the tests is not whole", e);
        }
    }

    /** What the next start finds: the library whole, and the draft restored and saved. */
    private int kept(DemoCopy demo) throws LibraryException, IOException {
        try (var library = demo.open(); var drafts = new Drafts(folder.resolve("drafts"))) {
            assertEquals(List.of(), library.problems().stream()
                    .filter(problem -> problem.severity() != FileProblem.Severity.MISFIT).toList());
            var sessions = new Sessions(library, new Random(2));
            for (var draft : drafts.list(library)) {
                var session = drafts.restore(draft, sessions);
                if (session.conflict().isEmpty()) {
                    session.save();
                }
                session.close();
                drafts.remove(draft.path());
            }
            assertEquals(List.of(), leftovers(folder.resolve("drafts")));
            return last(((FieldNote) library.file(NOTE).orElseThrow().root().orElseThrow()).getText());
        }
    }

    private static List<Path> leftovers(Path drafts) throws IOException {
        if (!Files.exists(drafts)) {
            return List.of();
        }
        try (var files = Files.walk(drafts)) {
            return files.filter(file -> file.toString().endsWith(".draft")).toList();
        }
    }

    private static int last(String text) {
        return NUMBER.matcher(text).results().mapToInt(found -> Integer.parseInt(found.group(1))).max().orElse(0);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, java.nio.charset.StandardCharsets.UTF_8);
        } catch (IOException e) {
            return e.getMessage();
        }
    }
}
