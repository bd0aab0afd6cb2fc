// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.benchlore.bench.speed.QueryTimes.Answer;

/** Sets what was measured against the project's targets, each by computing time against a peer of the same run. */
final class Targets {

    private static final int LARGE = 100_000;
    private static final int HUGE = 1_000_000;
    private static final double MICROS_A_MILLI = 1_000;
    /** An engine that finds much less than plain Lucene is not quick: it does not do the work. */
    private static final double FINDS_ENOUGH = 0.5;

    private final Measured measured;

    Targets(Measured measured) {
        this.measured = measured;
    }

    List<Target> all() {
        var all = new ArrayList<Target>();
        all.addAll(searching());
        all.addAll(indexing());
        all.addAll(updating());
        all.addAll(opening());
        return List.copyOf(all);
    }

    private List<Target> searching() {
        int notes = measured.settings().notes();
        double slowest = worst(classes(), Spread::p99, null) / MICROS_A_MILLI;
        double both = Math.max(worst(classes(), Spread::p50, Engine.LUCENE), worst(classes(), Spread::p99, Engine.LUCENE));
        double all = Math.max(worstOfAll(Spread::p50), worstOfAll(Spread::p99));
        return List.of(
                Target.of("G1", "while typing: p50 and p99 / Lucene top-10", both, 1.2, "worst class" + left()),
                Target.of("G1", "after the pause: p50 and p99 / Lucene top-10", all, 2.0,
                        "worst class, with passages, reasons and counts" + left()),
                new Target("G2", "slowest class, p99 in ms", slowest, notes < HUGE ? 20 : 50, notes >= LARGE,
                        notes >= LARGE ? "" : "from " + LARGE + " notes on"),
                Target.of("G3", "2-letter prefix: p99 / PrefixQuery",
                        worst(List.of(QueryClass.TWO_LETTERS), Spread::p99, Engine.LUCENE), 0.5, ""),
                Target.of("G4", "exact code: p50 / SQLite B-tree",
                        worst(List.of(QueryClass.CODE), Spread::p50, Engine.B_TREE), 1.0, ""),
                Target.of("G5", "all but code: p99 / FTS5", worst(classes().stream()
                        .filter(kind -> kind != QueryClass.CODE).toList(), Spread::p99, Engine.FTS5), 0.25,
                        "worst class" + left()));
    }

    /** Classes in which the product finds what there is to be found. */
    private List<QueryClass> classes() {
        return Arrays.stream(QueryClass.values()).filter(this::findsEnough).toList();
    }

    private boolean findsEnough(QueryClass kind) {
        double all = measured.queries().of(kind, Engine.LUCENE).map(Answer::finds).orElse(0.0);
        return measured.queries().of(kind, Engine.PRODUCT).filter(own -> own.finds() >= FINDS_ENOUGH * all).isPresent();
    }

    private String left() {
        var left = Arrays.stream(QueryClass.values()).filter(kind -> !findsEnough(kind)).map(QueryClass::label).toList();
        return left.isEmpty() ? "" : "; left out, since it finds too little: " + String.join(", ", left);
    }

    /** Returns the greatest figure of the product, or its greatest ratio to a peer that can answer. */
    private double worst(List<QueryClass> kinds, ToDoubleFunction<Spread> figure, String peer) {
        return kinds.stream().filter(kind -> peer == null || measured.queries().of(kind, peer).isPresent())
                .mapToDouble(kind -> figure(kind, Engine.PRODUCT, figure) / (peer == null ? 1 : figure(kind, peer, figure)))
                .max().orElse(Double.NaN);
    }

    private double worstOfAll(ToDoubleFunction<Spread> figure) {
        return classes().stream().mapToDouble(kind -> figure(kind, Engine.PRODUCT_ALL, figure)
                / figure(kind, Engine.LUCENE, figure)).max().orElse(Double.NaN);
    }

    private double figure(QueryClass kind, String engine, ToDoubleFunction<Spread> figure) {
        return figure.applyAsDouble(measured.queries().of(kind, engine).orElseThrow().time());
    }

    private List<Target> indexing() {
        var own = measured.building().get(Engine.PRODUCT);
        var lucene = measured.building().get(Engine.LUCENE);
        return List.of(
                Target.of("G6", "index size / Lucene", (double) own.bytes() / lucene.bytes(), 1.5, ""),
                Target.of("G7", "full reindex / Lucene", own.time().cpu() / lucene.time().cpu(), 2.0,
                        "the product reads and parses its files as well"));
    }

    private List<Target> updating() {
        var own = measured.updates().cpu().get(Updates.WHOLE);
        var lucene = measured.updates().cpu().get(Updates.LUCENE);
        return List.of(
                Target.of("G8", "save to visible: p50 / Lucene update and refresh", own.p50() / lucene.p50(), 2.0,
                        "the product writes a file and its catalogue as well"),
                Target.of("G8", "save to visible, p99 in ms", own.p99() / MICROS_A_MILLI, 50, ""),
                Target.of("G8", "index commits on a save", measured.updates().commits() ? 1 : 0, 0, ""),
                new Target("G9", "update at 1,000,000 / at 10,000; files read at reopening", Double.NaN, 1.3, false,
                        "needs two runs: compare --notes 10000 with --notes 1000000"));
    }

    private List<Target> opening() {
        var opening = measured.opening();
        double sax = opening.sax().cpu();
        return List.of(
                Target.of("G10", "cold open, all files whole / SAX", opening.whole().cpu() / sax, 2.0, ""),
                Target.of("G10", "cold open from a valid catalogue / SAX", opening.reopen().cpu() / sax, 0.25, ""),
                Target.of("G11", "loading all / loading a fifth", opening.whole().cpu() / opening.wholeOfFifth().cpu(), 5.5,
                        "fresh processes: starting up lowers it"),
                Target.of("G12", "MB for 1,000 loaded files", opening.loadedAThousand(), 10.5, "notes of about "
                        + measured.fileBytes() / opening.files() + " bytes; the target is for procedures of 4.6 KB"),
                Target.of("G12", "MB for 1,000 rows", opening.rowsAThousand(), 0.25, ""),
                Target.of("G13", "first search after opening, ms on the wall",
                        opening.firstSearch().wall() / MICROS_A_MILLI, 100, "after the warm-up that the window does in the background"));
    }
}
