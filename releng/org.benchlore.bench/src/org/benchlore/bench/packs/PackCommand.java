// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.packs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;

import org.benchlore.bench.BenchException;
import org.benchlore.bench.Folders;
import org.benchlore.bench.ManyProcedures;
import org.benchlore.pack.PackRequest;
import org.benchlore.pack.Packing;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Measures how long the pages of a large library take and how much memory; the first round is what a user waits for. */
@Command(name = "pack", mixinStandardHelpOptions = true,
        description = "Times the pages of a library made large, with a learner's way; the first time and again.")
public final class PackCommand implements Callable<Integer> {

    private static final double NANOS_A_SECOND = 1e9;
    private static final long MEGABYTE = 1_000_000;

    @Option(names = "--library", paramLabel = "DIR", defaultValue = "procedures",
            description = "The library whose procedures are copied (default: procedures).")
    private Path library;

    @Option(names = "--procedures", paramLabel = "N", defaultValue = "1000", description = "How many procedures (default: 1000).")
    private int procedures;

    @Option(names = "--rounds", paramLabel = "N", defaultValue = "3", description = "Packs in this process (default: 3).")
    private int rounds;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        if (procedures < 1 || rounds < 1) {
            throw new BenchException("Give 1 or more everywhere");
        }
        try (var folders = new Folders()) {
            var copy = folders.of("library");
            new ManyProcedures(library, copy).write(procedures);
            // A catalogue is there in everyday use.
            Library.open(copy, folders.of("cache"), new NullProgressMonitor()).close();
            for (int round = 1; round <= rounds; round++) {
                tell(round, copy, folders.of("cache"), folders.of("packs").resolve("pack-" + round));
            }
        }
        return 0;
    }

    private void tell(int round, Path copy, Path cache, Path out) throws Exception {
        long begin = System.nanoTime();
        try (var open = Library.open(copy, cache, new NullProgressMonitor())) {
            var everything = new PackRequest("All", List.of(), List.of(), List.of(), Set.of(), true, true, Set.of());
            var made = new Packing(open, LocalDate.of(2026, 11, 25)).make(everything, Set.of(Packing.Form.HTML), true, out,
                    new NullProgressMonitor());
            double seconds = (System.nanoTime() - begin) / NANOS_A_SECOND;
            spec.commandLine().getOut().println(String.format(Locale.ROOT, "round %d: %d pages, %d MB, in %.1f s; memory so far at most %s",
                    round, made.pages(), Folders.size(out) / MEGABYTE, seconds, memory()));
            spec.commandLine().getOut().flush();
        }
    }

    /** All that the process has held at once, where the system tells. */
    private static String memory() throws IOException {
        var status = Path.of("/proc/self/status");
        if (!Files.exists(status)) {
            return "not told by this system";
        }
        return Files.readAllLines(status).stream().filter(line -> line.startsWith("VmHWM")).findFirst()
                .map(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1000 + " MB").orElse("not told by this system");
    }
}
