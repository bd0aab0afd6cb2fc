// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs;

import java.util.Locale;
import java.util.stream.Stream;

import org.benchlore.store.Row;
import org.benchlore.ui.look.Words;

/**
 * A job as it stands in the list.
 *
 * @param row the record
 * @param unit what its unit is called
 * @param waits what it waits for, in words; empty if it waits for nothing
 * @param next what is next to do, in words; empty if nobody planned anything or the job is closed
 */
record JobLine(Row row, String unit, String waits, String next) {

    String state() {
        return Words.state(row.status());
    }

    String opened() {
        return row.date().map(Object::toString).orElse("");
    }

    boolean isClosed() {
        return row.status().equals("CLOSED");
    }

    boolean isWaiting() {
        return row.status().startsWith("WAITING");
    }

    boolean matches(String typed) {
        var all = Stream.of(row.title(), unit, state(), opened(), waits, next).map(words -> words.toLowerCase(Locale.ROOT)).toList();
        return Stream.of(typed.strip().toLowerCase(Locale.ROOT).split("\\s+"))
                .allMatch(piece -> all.stream().anyMatch(words -> words.contains(piece)));
    }
}
