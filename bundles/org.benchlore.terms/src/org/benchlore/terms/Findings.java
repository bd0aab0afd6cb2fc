// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the readings of one text, each key once, and what was found wrong on the way. */
final class Findings {
    private final List<CodeReading> readings = new ArrayList<>();
    private String problem;

    void add(CodeScheme scheme, String text, String remark) {
        var key = new CodeKey(scheme, text);
        if (readings.stream().noneMatch(reading -> reading.key().equals(key))) {
            readings.add(new CodeReading(key, remark));
        }
    }

    /** Keeps the first problem: the scheme that fits best is asked first. */
    void problem(String sentence) {
        if (problem == null) {
            problem = sentence;
        }
    }

    boolean has(CodeScheme scheme) {
        return readings.stream().anyMatch(reading -> reading.key().scheme() == scheme);
    }

    boolean isEmpty() {
        return readings.isEmpty();
    }

    List<CodeReading> readings() {
        return List.copyOf(readings);
    }

    Optional<String> problem() {
        return Optional.ofNullable(problem);
    }
}
