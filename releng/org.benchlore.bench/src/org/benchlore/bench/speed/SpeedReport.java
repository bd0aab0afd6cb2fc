// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.List;
import java.util.Locale;

import org.benchlore.bench.Table;
import org.benchlore.bench.speed.Probe.Reading;

/** What was measured, as tables. */
final class SpeedReport {

    private static final int FEWEST_ROUNDS = 5;
    private static final double MEGA = 1_000_000;
    private static final double MICROS_A_MILLI = 1_000;
    private static final List<String> ENGINES =
            List.of(Engine.PRODUCT, Engine.PRODUCT_ALL, Engine.LUCENE, Engine.LUCENE_BARE, Engine.FTS5, Engine.B_TREE);

    private final Measured measured;

    SpeedReport(Measured measured) {
        this.measured = measured;
    }

    String text() {
        return String.join("\n", head(), queries(), ratios(), building(), updates(), opening(), targets());
    }

    private String head() {
        var settings = measured.settings();
        return settings.notes() + " invented notes, " + megabytes(measured.textBytes()) + " MB of text in "
                + megabytes(measured.fileBytes()) + " MB of files; medians of " + settings.rounds() + " rounds, "
                + settings.queries() + " queries a class, seed " + settings.seed() + "; Java "
                + Runtime.version().feature() + ".\n" + (settings.rounds() < FEWEST_ROUNDS
                        ? "Fewer than " + FEWEST_ROUNDS + " rounds: a trial, not a measurement.\n" : "");
    }

    private String queries() {
        var head = new String[ENGINES.size() + 1];
        head[0] = "CPU us, p50/p99 (found)";
        for (int i = 0; i < ENGINES.size(); i++) {
            head[i + 1] = ENGINES.get(i);
        }
        var table = new Table(head);
        for (var kind : QueryClass.values()) {
            var cells = new String[head.length];
            cells[0] = kind.label();
            for (int i = 0; i < ENGINES.size(); i++) {
                cells[i + 1] = measured.queries().of(kind, ENGINES.get(i)).map(answer -> spread(answer.time())
                        + String.format(Locale.ROOT, " (%.0f%%)", answer.finds() * 100)).orElse("-");
            }
            table.add(cells);
        }
        return table.toString();
    }

    private String ratios() {
        var table = new Table("Benchlore / peer, p50 and p99", Engine.LUCENE, Engine.LUCENE_BARE, Engine.FTS5,
                Engine.B_TREE);
        for (var kind : QueryClass.values()) {
            table.add(kind.label(), ratio(kind, Engine.LUCENE), ratio(kind, Engine.LUCENE_BARE), ratio(kind, Engine.FTS5),
                    ratio(kind, Engine.B_TREE));
        }
        return table.toString();
    }

    private String ratio(QueryClass kind, String peer) {
        var own = measured.queries().of(kind, Engine.PRODUCT).orElseThrow().time();
        return measured.queries().of(kind, peer).map(QueryTimes.Answer::time).map(time -> String.format(Locale.ROOT,
                "%.2f %.2f", own.p50() / time.p50(), own.p99() / time.p99())).orElse("-");
    }

    private String building() {
        var table = new Table("index", "MB", "CPU s", "wall s", "notes a CPU s");
        measured.building().forEach((name, one) -> table.add(name, megabytes(one.bytes()),
                number(one.time().cpu() / MEGA), number(one.time().wall() / MEGA),
                String.format(Locale.ROOT, "%.0f", measured.settings().notes() / (one.time().cpu() / MEGA))));
        return table.toString();
    }

    private String updates() {
        var table = new Table("one note anew, p50/p99", "CPU us", "wall us");
        measured.updates().cpu().forEach((step, cpu) ->
                table.add(step, spread(cpu), spread(measured.updates().wall().get(step))));
        return table.toString();
    }

    private String opening() {
        var opening = measured.opening();
        var table = new Table("fresh process", "CPU ms", "wall ms", "/ SAX");
        add(table, "SAX over all files", opening.sax());
        add(table, "load all files whole", opening.whole());
        add(table, "load a fifth whole", opening.wholeOfFifth());
        add(table, "open without a catalogue", opening.scan());
        add(table, "open from a valid catalogue", opening.reopen());
        add(table, "first search after opening", opening.firstSearch());
        return table + String.format(Locale.ROOT, "second search %.1f ms on the wall; %.3f MB for 1,000 rows; %.2f MB for"
                + " 1,000 of %d loaded files%n", opening.firstSearch().value() / MICROS_A_MILLI, opening.rowsAThousand(),
                opening.loadedAThousand(), opening.held());
    }

    private void add(Table table, String what, Reading reading) {
        table.add(what, number(reading.cpu() / MICROS_A_MILLI), number(reading.wall() / MICROS_A_MILLI),
                number(reading.cpu() / measured.opening().sax().cpu()));
    }

    private String targets() {
        var text = new StringBuilder();
        var table = new Table("target", "reached", "at most", "");
        var all = new Targets(measured).all();
        all.forEach(target -> table.add(target.id() + " " + target.what(), target.figure(),
                String.format(Locale.ROOT, "%.2f", target.most()), target.verdict()));
        text.append(table);
        all.stream().filter(target -> !target.remark().isEmpty()).forEach(target -> text.append(target.id()).append(' ')
                .append(target.what()).append(": ").append(target.remark()).append('\n'));
        return text.toString();
    }

    private static String spread(Spread spread) {
        return String.format(Locale.ROOT, "%.0f/%.0f", spread.p50(), spread.p99());
    }

    private static String megabytes(long bytes) {
        return number(bytes / MEGA);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
