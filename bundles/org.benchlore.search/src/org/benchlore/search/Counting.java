// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.SimpleCollector;
import org.benchlore.search.Results.Count;

/** Counts what there is to narrow to. A facet that is narrowed by already is counted as if it were not. */
final class Counting {

    private final IndexSearcher searcher;
    private final Narrowing narrowing;

    Counting(IndexSearcher searcher, Narrowing narrowing) {
        this.searcher = searcher;
        this.narrowing = narrowing;
    }

    /** How many hits there are in all, and of what sort. */
    record Counted(long total, Map<Facet, List<Count>> counts) {
    }

    Counted of(Query asked) throws IOException {
        var free = new ArrayList<>(List.of(Facet.values()));
        free.removeAll(narrowing.to().keySet());
        var all = counted(narrowing.of(asked), free);
        for (var facet : narrowing.to().keySet()) {
            all.counts().putAll(counted(narrowing.of(asked, facet), List.of(facet)).counts());
        }
        return all;
    }

    private Counted counted(Query query, List<Facet> facets) throws IOException {
        var collector = new Collector(facets);
        searcher.search(query, collector);
        return collector.counted();
    }

    /**
     * Counts ordinals segment by segment, and only then looks at the values. What names no machine is for every one.
     */
    private static final class Collector extends SimpleCollector {

        private final List<Facet> facets;
        private final List<Map<String, Long>> totals = new ArrayList<>();
        private final List<SortedSetDocValues> values = new ArrayList<>();
        private final List<SortedDocValues> singles = new ArrayList<>();
        private final List<long[]> counts = new ArrayList<>();
        private long total;
        private long forAllMachines;

        Collector(List<Facet> facets) {
            this.facets = facets;
            facets.forEach(facet -> totals.add(new HashMap<>()));
        }

        @Override
        protected void doSetNextReader(LeafReaderContext context) throws IOException {
            addUp();
            for (var facet : facets) {
                var known = DocValues.getSortedSet(context.reader(), facet.field());
                values.add(known);
                singles.add(DocValues.unwrapSingleton(known));
                counts.add(new long[(int) known.getValueCount()]);
            }
        }

        @Override
        public void collect(int document) throws IOException {
            total++;
            for (int i = 0; i < values.size(); i++) {
                if (!count(i, document) && facets.get(i) == Facet.MACHINE) {
                    forAllMachines++;
                }
            }
        }

        /** Most elements have one value or none, which is told quicker. Returns whether there is one. */
        private boolean count(int facet, int document) throws IOException {
            var single = singles.get(facet);
            if (single != null) {
                boolean has = single.advanceExact(document);
                if (has) {
                    counts.get(facet)[single.ordValue()]++;
                }
                return has;
            }
            var known = values.get(facet);
            boolean has = known.advanceExact(document);
            for (int each = 0; has && each < known.docValueCount(); each++) {
                counts.get(facet)[(int) known.nextOrd()]++;
            }
            return has;
        }

        private void addUp() throws IOException {
            for (int i = 0; i < values.size(); i++) {
                var counted = counts.get(i);
                for (int ord = 0; ord < counted.length; ord++) {
                    if (counted[ord] > 0) {
                        totals.get(i).merge(values.get(i).lookupOrd(ord).utf8ToString(), counted[ord], Long::sum);
                    }
                }
            }
            values.clear();
            singles.clear();
            counts.clear();
        }

        Counted counted() throws IOException {
            addUp();
            var found = new EnumMap<Facet, List<Count>>(Facet.class);
            for (int i = 0; i < facets.size(); i++) {
                long more = facets.get(i) == Facet.MACHINE ? forAllMachines : 0;
                found.put(facets.get(i), totals.get(i).entrySet().stream()
                        .map(each -> new Count(each.getKey(), each.getValue() + more))
                        .sorted(Comparator.comparingLong(Count::hits).reversed().thenComparing(Count::value)).toList());
            }
            return new Counted(total, found);
        }

        @Override
        public ScoreMode scoreMode() {
            return ScoreMode.COMPLETE_NO_SCORES;
        }
    }
}
