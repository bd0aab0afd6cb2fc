// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.benchlore.evidence.decide.Option;
import org.benchlore.plan.adding.Figure;
import org.benchlore.plan.adding.Proposal;

/**
 * What one way out comes to for a job: straight over how often one that is left in brings the unit back.
 *
 * @param way the way out
 * @param never what it comes to where it never does
 * @param always what it comes to where it always does
 */
record CostLine(Option way, double never, double always) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** The ways out that are open, in their usual order. Both ends are asked of the decision, so that line and table agree. */
    static List<CostLine> of(Proposal one) {
        var never = one.with(Figure.COMES_BACK, BigDecimal.ZERO).decision().customer().costs();
        var always = one.with(Figure.COMES_BACK, HUNDRED).decision().customer().costs();
        var lines = new ArrayList<CostLine>();
        for (var way : Option.values()) {
            if (never.containsKey(way) && always.containsKey(way)) {
                lines.add(new CostLine(way, never.get(way).doubleValue(), always.get(way).doubleValue()));
            }
        }
        return List.copyOf(lines);
    }

    /** What it comes to at a chance from 0 to 1. */
    double at(double chance) {
        return never + chance * (always - never);
    }

    /** What stands at its end. */
    String label() {
        return switch (way) {
            case LEAVE -> "leave it";
            case RENEW -> "renew it now";
            case TEST -> "test and decide";
            case SHELF -> "decide on sight";
        };
    }

    /** Which line it is, in words. */
    String words() {
        return switch (way) {
            case LEAVE -> "heavy line: leave it";
            case RENEW -> "thin line: renew it now";
            case TEST -> "long dashes: test it now and decide";
            case SHELF -> "dots: have it on the shelf and decide on sight";
        };
    }

    /** Its strokes from one point to another, told from the others without colour. */
    List<Shape> strokes(double fromX, double fromY, double toX, double toY) {
        return switch (way) {
            case LEAVE -> List.of(new Shape.Line(fromX, fromY, toX, toY, 3));
            case RENEW -> List.of(new Shape.Line(fromX, fromY, toX, toY, 1));
            case TEST -> broken(new Shape.Line(fromX, fromY, toX, toY, 2), 14, 7);
            case SHELF -> broken(new Shape.Line(fromX, fromY, toX, toY, 3), 3, 6);
        };
    }

    private static List<Shape> broken(Shape.Line whole, double stroke, double gap) {
        double acrossX = whole.toX() - whole.fromX();
        double acrossY = whole.toY() - whole.fromY();
        double length = Math.hypot(acrossX, acrossY);
        var strokes = new ArrayList<Shape>();
        for (double at = 0; at < length; at += stroke + gap) {
            double end = Math.min(length, at + stroke);
            strokes.add(new Shape.Line(whole.fromX() + acrossX * at / length, whole.fromY() + acrossY * at / length,
                    whole.fromX() + acrossX * end / length, whole.fromY() + acrossY * end / length, whole.line()));
        }
        return strokes;
    }
}
