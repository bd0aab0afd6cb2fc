// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.benchlore.bench.product.NoteFiles;
import org.benchlore.bench.product.Product;
import org.benchlore.bench.speed.Probe.Reading;
import org.benchlore.bench.speed.Probe.What;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every measurement of a fresh process, here in this one, on a small library. */
class ProbeTest {

    @TempDir
    Path folder;

    private Probe.Place place;

    @BeforeEach
    void write() throws Exception {
        var corpus = Corpus.of(100, 1);
        place = new Probe.Place(folder.resolve("library"), folder.resolve("cache"), folder.resolve("index"), 100,
                corpus.notes().get(0).title());
        new NoteFiles(place.library()).write(corpus.notes());
        Product.library(place.library(), place.cache()).close();
    }

    @ParameterizedTest
    @EnumSource(names = {"SAX", "WHOLE", "SCAN", "REOPEN", "FIRST_SEARCH"})
    void itTakesTime(What what) throws Exception {
        var reading = new Probe(place).measure(what);
        assertTrue(reading.cpu() > 0 && reading.wall() > 0, reading::toString);
    }

    @Test
    void loadedFilesTakeRoom() throws Exception {
        assertTrue(new Probe(place).measure(What.HEAP_LOADED).value() > 0.01);
    }

    @Test
    void itsPlaceAndItsReadingCanBeHandedOver() {
        assertEquals(place, Probe.Place.of(place.words()));
        assertEquals(new Reading(1.5, 2.5, 0.25), Reading.of(new Reading(1.5, 2.5, 0.25).line()));
    }
}
