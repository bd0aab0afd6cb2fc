// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.benchlore.bench.BenchException;
import org.benchlore.bench.speed.Probe.Reading;
import org.benchlore.bench.speed.Probe.What;

/** Runs probes, each in a process of its own with the same Java and the same options as this one. */
final class Probes {

    private final int rounds;

    Probes(int rounds) {
        this.rounds = rounds;
    }

    /** Measures in as many processes as there are rounds and returns the median of each figure. */
    Reading measure(What what, Probe.Place place) throws IOException, InterruptedException, BenchException {
        var readings = new ArrayList<Reading>();
        for (int round = 0; round < rounds; round++) {
            readings.add(once(what, place));
        }
        return new Reading(Spread.median(readings, Reading::cpu), Spread.median(readings, Reading::wall),
                Spread.median(readings, Reading::value));
    }

    private static Reading once(What what, Probe.Place place) throws IOException, InterruptedException, BenchException {
        var process = new ProcessBuilder(command(what, place)).redirectError(Redirect.INHERIT).start();
        var printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        if (process.waitFor() != 0 || printed.isEmpty()) {
            throw new BenchException("The measurement " + what + " ended badly: the lines above say why");
        }
        return Reading.of(printed);
    }

    private static List<String> command(What what, Probe.Place place) {
        var command = new ArrayList<String>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Probe.class.getName(), what.name()));
        command.addAll(place.words());
        return command;
    }
}
