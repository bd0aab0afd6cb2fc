// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.benchlore.bench.speed.Clock.Time;
import org.benchlore.bench.speed.Probe.Reading;
import org.junit.jupiter.api.Test;

/** Figures set against the targets, and what is printed of them. */
class TargetsTest {

    /** An engine that always finds one row, or none. */
    private record Always(String name, int rows) implements Engine {

        @Override
        public boolean knows(QueryClass kind) {
            return true;
        }

        @Override
        public int search(QueryClass kind, String typed) {
            return rows;
        }
    }

    private static Measured measured(int notes, int found, long bytes, double reopen) throws Exception {
        var queries = new EnumMap<QueryClass, List<String>>(QueryClass.class);
        List.of(QueryClass.values()).forEach(kind -> queries.put(kind, List.of("a", "b")));
        var times = QueryTimes.measure(List.of(new Always(Engine.PRODUCT, found),
                new Always(Engine.PRODUCT_ALL, found), new Always(Engine.LUCENE, 1),
                new Always(Engine.LUCENE_BARE, 1), new Always(Engine.FTS5, 1), new Always(Engine.B_TREE, 1)), queries, 1);
        var building = Map.of(Engine.PRODUCT, new Building(new Time(300, 300), bytes),
                Engine.LUCENE, new Building(new Time(200, 200), 1_000));
        var spreads = Map.of(Updates.WHOLE, new Spread(3_000, 60_000), Updates.LUCENE, new Spread(1_000, 2_000));
        var one = new Reading(100, 100, 0);
        var opening = new Opening(notes, one, one, one, one, new Reading(reopen, reopen, 0), new Reading(1, 250_000, 0),
                0.5, notes, 1);
        return new Measured(new Measured.Settings(notes, 1, 2, 1, 1, true), 1_000, 2_000, building, times,
                new Updates.Result(spreads, spreads, false), opening);
    }

    private static String verdict(Measured measured, String id, String what) {
        return new Targets(measured).all().stream().filter(t -> t.id().equals(id) && t.what().contains(what)).findFirst()
                .orElseThrow().verdict();
    }

    @Test
    void aFigureIsMetUpToItsTarget() throws Exception {
        assertEquals("met", verdict(measured(1000, 1, 1_500, 25), "G6", "size"));
        assertEquals("NOT MET", verdict(measured(1000, 1, 1_501, 25), "G6", "size"));
        assertEquals("met", verdict(measured(1000, 1, 1, 25), "G10", "catalogue"));
        assertEquals("NOT MET", verdict(measured(1000, 1, 1, 26), "G10", "catalogue"));
    }

    @Test
    void eachStandsAgainstItsOwnLimit() throws Exception {
        var measured = measured(1000, 1, 1, 1);
        assertEquals("met", verdict(measured, "G7", "reindex"));
        assertEquals("NOT MET", verdict(measured, "G8", "p50"));
        assertEquals("NOT MET", verdict(measured, "G8", "p99"));
        assertEquals("met", verdict(measured, "G8", "commits"));
        assertEquals("NOT MET", verdict(measured, "G12", "rows"));
        assertEquals("met", verdict(measured, "G12", "loaded"));
        assertEquals("NOT MET", verdict(measured, "G13", "first"));
    }

    @Test
    void slownessOfASmallLibraryIsNotJudged() throws Exception {
        assertEquals("not judged", verdict(measured(1000, 1, 1, 1), "G2", "p99"));
        assertEquals("met", verdict(measured(100_000, 1, 1, 1), "G2", "p99"));
    }

    @Test
    void anEngineThatFindsNothingIsNotCalledQuick() throws Exception {
        assertEquals("not judged", verdict(measured(1000, 0, 1, 1), "G1", "typing"));
        assertEquals("not judged", verdict(measured(1000, 0, 1, 1), "G5", "FTS5"));
    }

    @Test
    void theReportNamesEveryTargetAndSaysThatOneRoundIsATrial() throws Exception {
        var text = new SpeedReport(measured(1000, 1, 1, 1)).text();
        for (int i = 1; i <= 13; i++) {
            assertTrue(text.contains("\nG" + i + " "), "G" + i);
        }
        assertTrue(text.contains("Fewer than 5 rounds: a trial, not a measurement."));
    }

    @Test
    void theJsonHoldsFiguresAndVerdicts() throws Exception {
        var json = new SpeedJson(measured(1000, 1, 1_501, 1)).json();
        assertEquals(1.501, json.getAsJsonArray("targets").asList().stream().map(target -> target.getAsJsonObject())
                .filter(target -> target.get("id").getAsString().equals("G6")).findFirst().orElseThrow()
                .get("reached").getAsDouble());
        assertEquals(1.0, json.getAsJsonObject("queries").getAsJsonObject("exact code").getAsJsonObject(Engine.FTS5)
                .get("finds").getAsDouble());
    }
}
