// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import org.benchlore.bench.speed.Probe.Reading;
import org.benchlore.bench.speed.Probe.What;

/**
 * What opening costs in a fresh process, and what it leaves in memory.
 *
 * @param files files of the library
 * @param sax parsing all files with SAX
 * @param whole loading all files whole
 * @param wholeOfFifth loading a fifth of them whole
 * @param scan opening the library without a catalogue
 * @param reopen opening it from a valid catalogue
 * @param firstSearch the first search after opening; its value is the wall time of the second
 * @param rows megabytes of the catalogue's rows
 * @param held how many files were held loaded
 * @param loaded megabytes of those
 */
record Opening(int files, Reading sax, Reading whole, Reading wholeOfFifth, Reading scan, Reading reopen,
        Reading firstSearch, double rows, int held, double loaded) {

    static final int FIFTH = 5;
    private static final int MOST_HELD = 10_000;

    /** Nothing was measured. */
    static Opening none(int files) {
        var nothing = new Reading(Double.NaN, Double.NaN, Double.NaN);
        return new Opening(files, nothing, nothing, nothing, nothing, nothing, nothing, Double.NaN, 1, Double.NaN);
    }

    static Opening measure(Probe.Place place, int rounds) throws Exception {
        var probes = new Probes(rounds);
        var fifth = place.with(place.files() / FIFTH);
        int held = Math.min(place.files(), MOST_HELD);
        return new Opening(place.files(), probes.measure(What.SAX, place), probes.measure(What.WHOLE, place),
                probes.measure(What.WHOLE, fifth), probes.measure(What.SCAN, place), probes.measure(What.REOPEN, place),
                probes.measure(What.FIRST_SEARCH, place), probes.measure(What.HEAP_ROWS, place).value(),
                held, probes.measure(What.HEAP_LOADED, place.with(held)).value());
    }

    /** Returns megabytes for each thousand rows. */
    double rowsAThousand() {
        return rows * 1000 / files;
    }

    /** Returns megabytes for each thousand loaded files. */
    double loadedAThousand() {
        return loaded * 1000 / held;
    }
}
