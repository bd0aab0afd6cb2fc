// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.evidence.CountWords;
import org.benchlore.page.Labels;
import org.benchlore.plan.adding.Figure;
import org.benchlore.plan.adding.Proposal;

/**
 * Draws what each way out comes to for a job, over how often one that is left in brings the unit back: leaving is a heavy
 * rising line, renewing a thin one, testing long dashes, deciding on sight dots. Where leaving and renewing cross renewing
 * begins to pay. A bar on the axis shows between which figures it lies as far as is known, a ring on each line the best
 * figure. Told apart by line and word, not by colour.
 */
public final class CostDrawing {

    private static final double LEFT = 70;
    private static final double TOP = 24;
    private static final double WIDE = 440;
    private static final double HIGH = 190;
    private static final double TYPE = 12;
    private static final double LEADING = 16;
    private static final double ROOM = 1.6;
    private static final double LEAST = 0.02;
    private static final int MARKS = 4;

    private final Proposal one;
    private final List<CostLine> lines;
    private final double most;
    private final double dearest;
    private final List<Shape> shapes = new ArrayList<>();

    private CostDrawing(Proposal one) {
        this.one = one;
        this.lines = CostLine.of(one);
        double from = one.decision().customer().breakEven().orElse(LEAST);
        double known = one.assumptions().value(Figure.COMES_BACK).doubleValue() / 100;
        this.most = Math.min(1, ROOM * Math.max(LEAST, Math.max(from, known)));
        this.dearest = 1.1 * Math.max(1, lines.stream().mapToDouble(line -> Math.max(line.never(), line.at(most))).max().orElse(1));
    }

    /**
     * Draws the customer's costs.
     *
     * @param proposal what may be added
     * @param surePercent how sure the bar is
     * @param currency what amounts are in
     * @return the drawing
     */
    public static Drawing of(Proposal proposal, double surePercent, String currency) {
        return new CostDrawing(proposal).draw(surePercent, currency);
    }

    private Drawing draw(double surePercent, String currency) {
        axes(currency);
        lines.forEach(line -> shapes.addAll(line.strokes(x(0), y(line.never()), x(most), y(line.at(most)))));
        labels();
        var from = one.decision().customer().breakEven();
        from.ifPresent(at -> shapes.add(new Shape.Dash(x(at), y(0), x(at), y(dearest))));
        if (one.assumptions().find(Figure.COMES_BACK).isPresent()) {
            known(surePercent);
        }
        var words = description();
        double line = TOP + HIGH + 58;
        for (var text : words) {
            label(LEFT, line, text);
            line += LEADING;
        }
        return new Drawing(LEFT + WIDE + 120, line + 8, "What it comes to for a job: " + one.title(), String.join(" ", words), shapes);
    }

    /** The ends of lines that lie close together have their words one below the other. */
    private void labels() {
        double free = -LEADING;
        for (var line : lines.stream().sorted(Comparator.comparing((CostLine it) -> it.at(most)).reversed()).toList()) {
            free = Math.max(free + LEADING, y(line.at(most)));
            label(x(most) + 8, free, line.label());
        }
    }

    private void known(double surePercent) {
        double best = one.assumptions().value(Figure.COMES_BACK).doubleValue() / 100;
        boolean byHand = one.assumptions().find(Figure.COMES_BACK).orElseThrow().byHand();
        if (!byHand) {
            var band = one.known().findings().comeback().band(surePercent);
            shapes.add(new Shape.Line(x(Math.min(most, band.low())), y(0), x(Math.min(most, band.high())), y(0), 7));
        }
        lines.forEach(line -> shapes.add(new Shape.Ring(x(best), y(line.at(best)), 5, 2)));
    }

    private void axes(String currency) {
        shapes.add(new Shape.Line(x(0), y(0), x(most), y(0), 1));
        shapes.add(new Shape.Line(x(0), y(0), x(0), y(dearest), 1));
        for (int i = 0; i <= MARKS; i++) {
            double chance = most * i / MARKS;
            double cost = dearest * i / MARKS;
            shapes.add(new Shape.Line(x(chance), y(0), x(chance), y(0) + 5, 1));
            shapes.add(new Shape.Label(x(chance), y(0) + 18, TYPE - 1, false, true, i == 0 ? "never"
                    : BigDecimal.valueOf(chance * 100).setScale(1, RoundingMode.HALF_UP).toPlainString()));
            shapes.add(new Shape.Line(x(0) - 5, y(cost), x(0), y(cost), 1));
            label(8, y(cost), BigDecimal.valueOf(cost).setScale(0, RoundingMode.HALF_UP).toPlainString());
        }
        shapes.add(new Shape.Label(x(most / 2), y(0) + 36, TYPE, false, true, "of a hundred left in, how many bring the unit back"));
        label(8, TOP / 2, "Cost for a job" + (currency.isEmpty() ? "" : ", " + currency));
    }

    private List<String> description() {
        var said = new ArrayList<String>();
        for (int i = 0; i < lines.size(); i += 2) {
            said.add(Labels.capital(lines.subList(i, Math.min(lines.size(), i + 2)).stream().map(CostLine::words)
                    .collect(Collectors.joining("; "))) + ".");
        }
        var from = one.decision().customer().breakEven();
        said.add(from.isPresent() ? "Dashed upright line: from " + CountWords.oneIn(from.getAsDouble()) + " on renewing pays."
                : "Renewing costs more, however often it fails.");
        said.add(one.assumptions().find(Figure.COMES_BACK).isPresent() ? "Rings: " + CountWords.oneIn(one.assumptions()
                .value(Figure.COMES_BACK).doubleValue() / 100) + ", as far as is known; the bar says between what."
                : "Nothing is recorded, so there is no mark for how often.");
        return said;
    }

    private void label(double x, double y, String text) {
        shapes.add(new Shape.Label(x, y, TYPE, false, false, text));
    }

    private static double part(double value, double of) {
        return of == 0 ? 0 : value / of;
    }

    private double x(double chance) {
        return LEFT + WIDE * part(chance, most);
    }

    private double y(double cost) {
        return TOP + HIGH * (1 - part(cost, dearest));
    }
}
