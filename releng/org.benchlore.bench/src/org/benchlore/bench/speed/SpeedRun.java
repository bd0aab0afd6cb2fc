// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.benchlore.bench.Folders;
import org.benchlore.bench.TextEntry;
import org.benchlore.bench.peers.CodeTable;
import org.benchlore.bench.peers.Fts5;
import org.benchlore.bench.peers.PlainLucene;
import org.benchlore.bench.product.NoteFiles;
import org.benchlore.bench.product.Product;

/** Measures the product and its peers on the same notes, one step after the other. */
final class SpeedRun {

    private static final String LIBRARY = "library";
    private static final String CACHE = "cache";
    private static final String DATABASE = "database";

    private final Measured.Settings settings;
    private final PrintWriter progress;
    private final Folders folders;
    private final Corpus corpus;

    SpeedRun(Measured.Settings settings, Folders folders, PrintWriter progress) {
        this.settings = settings;
        this.folders = folders;
        this.progress = progress;
        say("making " + settings.notes() + " notes");
        this.corpus = Corpus.of(settings.notes(), settings.seed());
    }

    private void say(String what) {
        progress.println("speed: " + what + " ...");
        progress.flush();
    }

    Measured run() throws Exception {
        new NoteFiles(folders.of(LIBRARY)).write(corpus.notes());
        Product.library(folders.of(LIBRARY), folders.of(CACHE)).close();
        say("building indexes");
        var building = Building.measure(builders(), folders, settings.rounds());
        long files = Folders.size(folders.of(LIBRARY));
        var opening = opening();
        try (var product = Product.of(Product.library(folders.of(LIBRARY), folders.of(CACHE)), folders.of(Engine.PRODUCT));
                var lucene = lucene(folders.of(Engine.LUCENE)); var fts5 = fts5(folders.of(Engine.FTS5));
                var codes = codes()) {
            say("searching");
            var times = QueryTimes.measure(engines(product, lucene, fts5, codes), queries(), settings.rounds());
            say("updating");
            var updates = new Updates(corpus, product, lucene, fts5, settings.seed())
                    .measure(settings.rounds(), settings.updates(), folders.of(Engine.PRODUCT));
            return new Measured(settings, textBytes(), files, building, times, updates, opening);
        }
    }

    private Opening opening() throws Exception {
        if (!settings.opening()) {
            return Opening.none(settings.notes());
        }
        say("opening in fresh processes");
        return Opening.measure(place(), settings.rounds());
    }

    private long textBytes() {
        return corpus.notes().stream().map(TextEntry::whole).mapToLong(text -> text.getBytes(StandardCharsets.UTF_8).length)
                .sum();
    }

    private Map<String, Building.Builder> builders() {
        var builders = new LinkedHashMap<String, Building.Builder>();
        builders.put(Engine.LUCENE, folder -> {
            try (var lucene = lucene(folder)) {
                lucene.add(corpus.notes());
            }
        });
        builders.put(Engine.FTS5, folder -> {
            try (var fts5 = fts5(folder)) {
                fts5.add(corpus.notes());
            }
        });
        builders.put(Engine.PRODUCT,
                folder -> Product.of(Product.library(folders.of(LIBRARY), folders.of(CACHE)), folder).close());
        return builders;
    }

    private static PlainLucene lucene(Path folder) throws Exception {
        return new PlainLucene(new StandardAnalyzer(), folder);
    }

    private static Fts5 fts5(Path folder) throws Exception {
        return new Fts5("unicode61", folder.resolve(DATABASE));
    }

    private CodeTable codes() throws Exception {
        var codes = new CodeTable(folders.of(Engine.B_TREE).resolve(DATABASE));
        codes.add(corpus.notes().stream().map(TextEntry::title).toList(), corpus.codes());
        return codes;
    }

    private static List<Engine> engines(Product product, PlainLucene lucene, Fts5 fts5, CodeTable codes) {
        return List.of(new ProductEngine(product, false), new ProductEngine(product, true),
                new LuceneEngine(Engine.LUCENE, lucene, true),
                new LuceneEngine(Engine.LUCENE_BARE, lucene, false), new Fts5Engine(fts5), new CodeTableEngine(codes));
    }

    private Map<QueryClass, List<String>> queries() {
        var maker = new QueryMaker(corpus, settings.seed());
        var queries = new EnumMap<QueryClass, List<String>>(QueryClass.class);
        for (var kind : QueryClass.values()) {
            queries.put(kind, maker.make(kind, settings.queries()));
        }
        return queries;
    }

    private Probe.Place place() throws Exception {
        var typed = new QueryMaker(corpus, settings.seed()).make(QueryClass.WORD_AND_LETTERS, 1).get(0);
        return new Probe.Place(folders.of(LIBRARY), folders.of(CACHE), folders.of(Engine.PRODUCT), settings.notes(), typed);
    }
}
