// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.ref.Reference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import javax.xml.parsers.SAXParserFactory;

import org.benchlore.bench.product.Product;
import org.benchlore.store.BookFormat;
import org.benchlore.store.LoadedFile;
import org.xml.sax.helpers.DefaultHandler;

/** One cold measurement in a fresh process. Prints microseconds of computing, on the wall, and a value of its own. */
public final class Probe {

    private static final int COLLECTIONS = 4;
    private static final int PAUSE_MILLIS = 50;
    private static final int MANY = 5;
    private static final double BYTES_A_MEGABYTE = 1_000_000;

    private final Place place;
    private final Clock clock = new Clock();

    /** What can be measured. */
    enum What {
        /** Parsing files with SAX and doing nothing with them. */
        SAX,
        /** Loading files whole. */
        WHOLE,
        /** Opening the library without a catalogue. */
        SCAN,
        /** Opening the library from a valid catalogue. */
        REOPEN,
        /** The first search after opening and warming up; the value is that of the second. */
        FIRST_SEARCH,
        /** Megabytes that the rows of the catalogue take. */
        HEAP_ROWS,
        /** Megabytes that loaded files take. */
        HEAP_LOADED
    }

    /**
     * What is measured on.
     *
     * @param library the library's folder
     * @param cache folder of a valid catalogue
     * @param index folder of an up-to-date index
     * @param files how many files are read, where files are read
     * @param typed what is searched for
     */
    record Place(Path library, Path cache, Path index, int files, String typed) {

        List<String> words() {
            return List.of(library.toString(), cache.toString(), index.toString(), Integer.toString(files), typed);
        }

        static Place of(List<String> words) {
            return new Place(Path.of(words.get(0)), Path.of(words.get(1)), Path.of(words.get(2)),
                    Integer.parseInt(words.get(3)), words.get(4));
        }

        Place with(int number) {
            return new Place(library, cache, index, number, typed);
        }
    }

    /**
     * What came out.
     *
     * @param cpu microseconds of computing
     * @param wall microseconds on the wall
     * @param value a value of its own, 0 where there is none
     */
    record Reading(double cpu, double wall, double value) {

        String line() {
            return String.format(Locale.ROOT, "%.1f %.1f %.6f", cpu, wall, value);
        }

        static Reading of(String line) {
            var parts = line.split(" ");
            return new Reading(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]), Double.parseDouble(parts[2]));
        }
    }

    Probe(Place place) {
        this.place = place;
    }

    /**
     * Measures once.
     *
     * @param arguments what, and the place
     * @throws Exception if it cannot be measured
     */
    public static void main(String[] arguments) throws Exception {
        var words = List.of(arguments);
        var reading = new Probe(Place.of(words.subList(1, words.size()))).measure(What.valueOf(words.get(0)));
        System.out.println(reading.line());
    }

    Reading measure(What what) throws Exception {
        return switch (what) {
            case SAX -> timed(this::sax);
            case WHOLE -> timed(this::whole);
            case SCAN -> timed(() -> Product.library(place.library(), emptyCache()).close());
            case REOPEN -> timed(() -> Product.library(place.library(), place.cache()).close());
            case FIRST_SEARCH -> firstSearch();
            case HEAP_ROWS -> heap(MANY, () -> Product.library(place.library(), place.cache()));
            case HEAP_LOADED -> heap(1, this::loaded);
        };
    }

    private Path emptyCache() throws IOException {
        return Files.createTempDirectory(place.cache(), "none");
    }

    private Reading timed(Clock.Work work) throws Exception {
        var time = clock.ofLiveThreads(work);
        return new Reading(time.cpu(), time.wall(), 0);
    }

    private List<Path> files() throws IOException {
        try (var files = Files.walk(place.library())) {
            return files.filter(file -> file.toString().endsWith(".xmi")).sorted().limit(place.files()).toList();
        }
    }

    private void sax() throws Exception {
        var factory = SAXParserFactory.newInstance();
        factory.setNamespaceAware(true);
        var parser = factory.newSAXParser();
        var nothing = new DefaultHandler();
        for (var file : files()) {
            parser.parse(new ByteArrayInputStream(Files.readAllBytes(file)), nothing);
        }
    }

    private void whole() throws IOException {
        var format = new BookFormat();
        for (var file : files()) {
            read(format, file);
        }
    }

    private LoadedFile read(BookFormat format, Path file) throws IOException {
        var path = place.library().relativize(file).toString().replace('\\', '/');
        return format.read(path, Files.readAllBytes(file));
    }

    private List<LoadedFile> loaded() throws IOException {
        var format = new BookFormat();
        var loaded = new ArrayList<LoadedFile>();
        for (var file : files()) {
            loaded.add(read(format, file));
        }
        return loaded;
    }

    private Reading firstSearch() throws Exception {
        try (var product = Product.of(Product.library(place.library(), place.cache()), place.index())) {
            product.warmUp();
            var first = clock.ofLiveThreads(() -> product.find(place.typed(), 10));
            var second = clock.ofLiveThreads(() -> product.find(place.typed(), 10));
            return new Reading(first.cpu(), first.wall(), second.wall());
        }
    }

    private interface Holder {
        Object hold() throws Exception;
    }

    /** The first holding brings in the classes; what further ones add is the data alone. */
    private Reading heap(int times, Holder holder) throws Exception {
        var held = new ArrayList<Object>();
        held.add(holder.hold());
        double before = used();
        for (int i = 0; i < times; i++) {
            held.add(holder.hold());
        }
        double added = (used() - before) / times;
        Reference.reachabilityFence(held);
        return new Reading(0, 0, added / BYTES_A_MEGABYTE);
    }

    /** Some objects go only after their cleaner has run, which another collection then sees. */
    private static double used() throws InterruptedException {
        for (int i = 0; i < COLLECTIONS; i++) {
            System.gc();
            Thread.sleep(PAUSE_MILLIS);
        }
        var runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
