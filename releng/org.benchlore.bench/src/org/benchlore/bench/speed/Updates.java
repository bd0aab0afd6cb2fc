// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

import org.benchlore.bench.BenchException;
import org.benchlore.bench.TextEntry;
import org.benchlore.bench.peers.Fts5;
import org.benchlore.bench.peers.PlainLucene;
import org.benchlore.bench.product.Product;

/** Writes single notes anew and waits until they are found, with each engine in turn. */
final class Updates {

    static final String SAVING = "Benchlore: file and catalogue";
    static final String INDEXING = "Benchlore: index";
    static final String WHOLE = "Benchlore: save to visible";
    static final String LUCENE = "Lucene: update and refresh";
    static final String FTS5 = "FTS5: update";

    private final Corpus corpus;
    private final Product product;
    private final PlainLucene lucene;
    private final Fts5 fts5;
    private final Random random;
    private final Clock clock = new Clock();
    private final Map<String, List<Clock.Time>> round = new LinkedHashMap<>();

    Updates(Corpus corpus, Product product, PlainLucene lucene, Fts5 fts5, long seed) {
        this.corpus = corpus;
        this.product = product;
        this.lucene = lucene;
        this.fts5 = fts5;
        this.random = new Random(seed);
    }

    /**
     * What single updates took.
     *
     * @param cpu microseconds of computing, by step
     * @param wall microseconds on the wall, by step
     * @param commits whether the product committed its index meanwhile
     */
    record Result(Map<String, Spread> cpu, Map<String, Spread> wall, boolean commits) {
    }

    Result measure(int rounds, int each, Path index) throws Exception {
        var before = commits(index);
        var cpu = new LinkedHashMap<String, List<Spread>>();
        var wall = new LinkedHashMap<String, List<Spread>>();
        for (int number = -1; number < rounds; number++) {
            round.clear();
            for (int i = 0; i < each; i++) {
                one("upd" + (number + 1) + "x" + i);
            }
            if (number >= 0) {
                round.forEach((step, times) -> {
                    cpu.computeIfAbsent(step, s -> new ArrayList<>()).add(spread(times, true));
                    wall.computeIfAbsent(step, s -> new ArrayList<>()).add(spread(times, false));
                });
            }
        }
        return new Result(medians(cpu), medians(wall), !commits(index).equals(before));
    }

    private static Spread spread(List<Clock.Time> times, boolean cpu) {
        return Spread.of(times.stream().mapToDouble(time -> cpu ? time.cpu() : time.wall()).toArray());
    }

    private static Map<String, Spread> medians(Map<String, List<Spread>> rounds) {
        var medians = new LinkedHashMap<String, Spread>();
        rounds.forEach((step, of) -> medians.put(step, Spread.median(of)));
        return medians;
    }

    private void one(String mark) throws Exception {
        int number = random.nextInt(corpus.notes().size());
        var old = corpus.notes().get(number);
        var note = new TextEntry(old.id(), old.title(), old.text() + " " + mark);
        var saving = clock.ofThread(() -> product.save(number, note.text()));
        var indexing = clock.ofThread(product::index);
        keep(SAVING, saving);
        keep(INDEXING, indexing);
        keep(WHOLE, saving.plus(indexing));
        keep(LUCENE, clock.ofThread(() -> lucene.update(note)));
        keep(FTS5, clock.ofThread(() -> fts5.update(number + 1, note.whole())));
        if (product.find(mark, 2).size() != 1) {
            throw new BenchException("The product does not find a note that was just saved: '" + mark + "'");
        }
    }

    private void keep(String step, Clock.Time time) {
        round.computeIfAbsent(step, s -> new ArrayList<>()).add(time);
    }

    /** A commit of Lucene writes a file of this name with a new number. */
    private static Set<String> commits(Path index) throws IOException {
        try (var files = Files.list(index)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.startsWith("segments_"))
                    .collect(Collectors.toSet());
        }
    }
}
