// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks every engine the same queries, class by class in turn, and keeps the median over the rounds. */
final class QueryTimes {

    private static final int WARM_UPS = 2;

    private final Map<QueryClass, Map<String, Answer>> answers = new EnumMap<>(QueryClass.class);

    /**
     * How an engine answered a class of queries.
     *
     * @param time microseconds of computing
     * @param finds share of the queries for which it found something
     */
    record Answer(Spread time, double finds) {
    }

    /** One round of one class with one engine. */
    private record Round(Spread time, double finds) {
    }

    /** Measures; rounds before the first that counts warm everything up. */
    static QueryTimes measure(List<Engine> engines, Map<QueryClass, List<String>> queries, int rounds) throws Exception {
        var kept = new HashMap<QueryClass, Map<String, List<Round>>>();
        for (int round = -WARM_UPS; round < rounds; round++) {
            for (var kind : queries.keySet()) {
                for (int i = 0; i < engines.size(); i++) {
                    var engine = engines.get(Math.floorMod(i + round, engines.size()));
                    if (engine.knows(kind)) {
                        var one = round(engine, kind, queries.get(kind));
                        if (round >= 0) {
                            kept.computeIfAbsent(kind, k -> new HashMap<>())
                                    .computeIfAbsent(engine.name(), name -> new ArrayList<>()).add(one);
                        }
                    }
                }
            }
        }
        return new QueryTimes(kept);
    }

    private QueryTimes(Map<QueryClass, Map<String, List<Round>>> rounds) {
        rounds.forEach((kind, engines) -> engines.forEach((engine, of) -> answers
                .computeIfAbsent(kind, k -> new HashMap<>())
                .put(engine, new Answer(Spread.median(of.stream().map(Round::time).toList()), of.get(0).finds()))));
    }

    private static Round round(Engine engine, QueryClass kind, List<String> queries) throws Exception {
        var clock = new Clock();
        var times = new double[queries.size()];
        int found = 0;
        for (int i = 0; i < times.length; i++) {
            var query = queries.get(i);
            var rows = new int[1];
            times[i] = clock.ofThread(() -> rows[0] = engine.search(kind, query)).cpu();
            found += rows[0] > 0 ? 1 : 0;
        }
        return new Round(Spread.of(times), (double) found / times.length);
    }

    /** Returns how an engine answered, or empty if it has no way to. */
    Optional<Answer> of(QueryClass kind, String engine) {
        return Optional.ofNullable(answers.getOrDefault(kind, Map.of()).get(engine));
    }

    /** Returns how every engine answered a class. */
    Map<String, Answer> of(QueryClass kind) {
        return Map.copyOf(answers.getOrDefault(kind, Map.of()));
    }
}
