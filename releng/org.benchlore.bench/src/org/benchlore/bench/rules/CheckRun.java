// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rules;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.ref.Reference;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

import org.benchlore.check.Checker;
import org.benchlore.check.Report;
import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.store.Changes;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Loads a library, checks it several times, then saves one procedure after the other and takes each change in. */
final class CheckRun {

    private static final double NANOS_A_MILLI = 1e6;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final com.sun.management.OperatingSystemMXBean process =
            ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class);
    private final Path folder;
    private final Path cache;
    private final Consumer<String> told;
    private int saved;

    /** Milliseconds of computing and on the wall. */
    private record Time(double cpu, double wall) {
    }

    CheckRun(Path folder, Path cache, Consumer<String> told) {
        this.folder = folder;
        this.cache = cache;
        this.told = told;
    }

    void run(int rounds, int changes) throws Exception {
        try (var library = Library.open(folder, cache, new NullProgressMonitor())) {
            var all = library.catalogue().entries().stream().map(entry -> library.file(entry.path()).orElseThrow()).toList();
            told.accept(all.size() + " files loaded, " + Runtime.getRuntime().availableProcessors() + " processors");
            var checker = new Checker(library, () -> DAY);
            var first = wholeProcess(() -> checker.all(new NullProgressMonitor()));
            told.accept(line("full check, the first in this process", List.of(first)));
            var warm = new ArrayList<Time>();
            for (int i = 0; i < rounds; i++) {
                warm.add(wholeProcess(() -> checker.all(new NullProgressMonitor())));
            }
            told.accept(line("full check after that", warm));
            told.accept(said(checker.report()));
            // Half as many before them warm the program up, as the changes before them do in an open window.
            change(library, checker, changes / 2);
            told.accept(line("one saved procedure taken in", change(library, checker, changes)));
            Reference.reachabilityFence(all);
        }
    }

    private static String said(Report report) {
        return "  " + report.errors() + " errors, " + report.warnings() + " warnings, " + report.silenced().size() + " silenced";
    }

    private List<Time> change(Library library, Checker checker, int count) throws Exception {
        var seen = new ArrayList<Changes>();
        var stop = library.onChange(seen::add);
        var times = new ArrayList<Time>();
        var rows = library.catalogue().rows(Kind.PROCEDURE).filter(row -> !isOfOriginal(row)).toList();
        for (int i = 0; i < count; i++) {
            var file = library.file(rows.get((int) ((long) i * 7919 % rows.size())).path()).orElseThrow();
            var copy = (Procedure) EcoreUtil.copy(file.root().orElseThrow());
            copy.setSummary("Changed for the time " + ++saved);
            seen.clear();
            library.save(copy, Optional.of(file.hash()));
            times.add(thisThread(() -> checker.changed(seen.get(0))));
        }
        stop.run();
        return times;
    }

    private static boolean isOfOriginal(Row row) {
        return !row.id().matches(".*-[0-9]{5}");
    }

    private Time thisThread(Callable<?> work) throws Exception {
        long wall = System.nanoTime();
        long cpu = threads.getCurrentThreadCpuTime();
        work.call();
        return new Time((threads.getCurrentThreadCpuTime() - cpu) / NANOS_A_MILLI, (System.nanoTime() - wall) / NANOS_A_MILLI);
    }

    /** Every thread of the process, compiler and collector included. */
    private Time wholeProcess(Callable<?> work) throws Exception {
        long wall = System.nanoTime();
        long cpu = process.getProcessCpuTime();
        work.call();
        return new Time((process.getProcessCpuTime() - cpu) / NANOS_A_MILLI, (System.nanoTime() - wall) / NANOS_A_MILLI);
    }

    private static String line(String what, List<Time> times) {
        return String.format(Locale.ROOT, "%-40s computing %8.1f ms (9 in 10 below %8.1f), wall %8.1f ms (%8.1f), of %d", what,
                at(times.stream().mapToDouble(Time::cpu).toArray(), 0.5), at(times.stream().mapToDouble(Time::cpu).toArray(), 0.9),
                at(times.stream().mapToDouble(Time::wall).toArray(), 0.5), at(times.stream().mapToDouble(Time::wall).toArray(), 0.9),
                times.size());
    }

    /** By nearest rank. */
    private static double at(double[] values, double share) {
        Arrays.sort(values);
        return values[Math.max(0, (int) Math.ceil(share * values.length) - 1)];
    }
}
