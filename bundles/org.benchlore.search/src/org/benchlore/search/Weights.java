// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import org.benchlore.model.FieldNote;
import org.benchlore.model.TopElement;
import org.benchlore.store.Row;

/**
 * How much more a hit is worth by its kind and status, in per cent: what was proved before what is suspected, what
 * people look for at the bench before lists (a machine's page holds a word for everything, a glossary explains words; the
 * work is elsewhere), withdrawn last. Common practice, no source; the order is what matters.
 */
final class Weights {

    private static final int MOST_SIGHTINGS = 10;

    private Weights() {
    }

    static long of(Row row, TopElement top) {
        return ofKind(row) * ofStatus(row.status()) / 100 + sightings(top);
    }

    /** What was seen oftener comes first among equals. */
    private static long sightings(TopElement top) {
        return top instanceof FieldNote note && note.getSeen() != null && note.getSeen().getCount() != null
                ? Math.min(note.getSeen().getCount(), MOST_SIGHTINGS) : 0;
    }

    private static long ofKind(Row row) {
        return switch (row.kind()) {
            case NOTE -> 150;
            case PROCEDURE -> 130;
            case DOCUMENT -> 120;
            case JOB, CODE -> 110;
            case UNIT, PART, TOOL, SUPPLY -> 100;
            case SHOP -> 60;
            case MACHINE -> 50;
            case GLOSSARY -> 10;
        };
    }

    private static long ofStatus(String status) {
        return switch (status) {
            case "HELD" -> 115;
            case "SEEN", "REVIEWED" -> 110;
            case "SUSPECTED" -> 105;
            case "RULED_OUT" -> 60;
            case "SUPERSEDED" -> 40;
            case "WITHDRAWN" -> 20;
            default -> 100;
        };
    }
}
