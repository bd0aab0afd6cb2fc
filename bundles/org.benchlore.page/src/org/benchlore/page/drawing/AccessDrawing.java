// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.benchlore.page.Labels;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanItem;
import org.benchlore.plan.search.AccessNode;
import org.benchlore.plan.search.Reach;

/**
 * Draws the accesses of a machine for a plan: one that is opened has a heavy frame and its turn, one that comes free with
 * another a double frame, one that could be opened besides a thin frame, one that could not a dashed one. Lines lead to
 * what must be open first. Told apart by line and word, not by colour.
 */
public final class AccessDrawing {

    private static final double WIDE = 210;
    private static final double HIGH = 54;
    private static final double GAP_X = 26;
    private static final double GAP_Y = 48;
    private static final double MARGIN = 20;
    private static final double TYPE = 12;
    private static final int LETTERS = 24;
    private static final double LEADING = 15;

    /** How an access stands in a plan. */
    private enum Standing {
        OPENED, FREE, POSSIBLE, NOT
    }

    private final Plan plan;
    private final Map<String, AccessNode> accesses = new TreeMap<>();
    private final Map<String, double[]> places = new HashMap<>();
    private final List<Shape> shapes = new ArrayList<>();
    private double width;
    private double height;

    private AccessDrawing(Plan plan) {
        this.plan = plan;
        plan.problem().accesses().forEach(access -> accesses.put(access.id(), access));
    }

    /** The drawing of a plan's accesses. */
    public static Drawing of(Plan plan) {
        return new AccessDrawing(plan).draw();
    }

    private Drawing draw() {
        place();
        accesses.values().forEach(this::lines);
        accesses.keySet().forEach(this::frame);
        double y = height;
        if (plan.machine().isInvented()) {
            shapes.add(new Shape.Label(MARGIN, y, TYPE, true, false, Labels.INVENTED));
            y += LEADING;
        }
        for (var line : List.of("Heavy frame with a turn: opened.  Double frame: comes free with what is opened.",
                "Thin frame: could be opened besides.  Dashed frame: could not be opened now.",
                "A line leads down from what must be open first; dashed where one of several will do.")) {
            shapes.add(new Shape.Label(MARGIN, y, TYPE, false, false, line));
            y += LEADING;
        }
        return new Drawing(width, y + MARGIN / 2, "Accesses: " + plan.machine().getTitle(), description(), shapes);
    }

    private void place() {
        var rows = new TreeMap<Integer, List<String>>();
        accesses.keySet().forEach(id -> rows.computeIfAbsent(level(id, new HashSet<>()), it -> new ArrayList<>()).add(id));
        int most = rows.values().stream().mapToInt(List::size).max().orElse(1);
        width = Math.max(560, 2 * MARGIN + most * WIDE + (most - 1) * GAP_X);
        double y = MARGIN;
        for (var row : rows.values()) {
            double x = (width - row.size() * WIDE - (row.size() - 1) * GAP_X) / 2;
            for (var id : row.stream().sorted(Comparator.comparing(this::middleAbove).thenComparing(it -> it)).toList()) {
                places.put(id, new double[] {x, y});
                x += WIDE + GAP_X;
            }
            y += HIGH + GAP_Y;
        }
        height = y - GAP_Y + 24;
    }

    private double middleAbove(String id) {
        return accesses.get(id).needs().stream().flatMap(List::stream).filter(places::containsKey)
                .mapToDouble(it -> places.get(it)[0]).average().orElse(0);
    }

    /** How many accesses lie above one; what needs itself in a circle counts once. */
    private int level(String id, Set<String> seen) {
        if (!accesses.containsKey(id) || !seen.add(id)) {
            return 0;
        }
        int level = accesses.get(id).needs().stream().flatMap(List::stream).mapToInt(it -> 1 + level(it, seen)).max().orElse(0);
        seen.remove(id);
        return level;
    }

    private void lines(AccessNode access) {
        for (var need : access.needs()) {
            for (var id : need) {
                if (places.containsKey(id)) {
                    var from = places.get(id);
                    var to = places.get(access.id());
                    double fromX = from[0] + WIDE / 2;
                    double toX = to[0] + WIDE / 2;
                    shapes.add(need.size() > 1 ? new Shape.Dash(fromX, from[1] + HIGH, toX, to[1])
                            : new Shape.Line(fromX, from[1] + HIGH, toX, to[1], 1));
                }
            }
        }
    }

    private void frame(String id) {
        var at = places.get(id);
        var standing = standing(id);
        shapes.add(new Shape.Box(at[0], at[1], WIDE, HIGH, standing == Standing.OPENED ? 3.5 : 1, standing == Standing.NOT));
        if (standing == Standing.FREE) {
            shapes.add(new Shape.Box(at[0] + 4, at[1] + 4, WIDE - 8, HIGH - 8, 1, false));
        }
        var lines = new ArrayList<>(SequenceDrawing.lines(title(id), LETTERS));
        lines.add(word(id, standing));
        double y = at[1] + HIGH / 2 - (lines.size() - 1) * LEADING / 2;
        for (int i = 0; i < lines.size(); i++) {
            shapes.add(new Shape.Label(at[0] + WIDE / 2, y, i == lines.size() - 1 ? TYPE - 2 : TYPE,
                    i < lines.size() - 1 && standing == Standing.OPENED, true, lines.get(i)));
            y += LEADING;
        }
    }

    private String title(String id) {
        return plan.machine().getAccesses().stream().filter(access -> access.getId().equals(id))
                .map(access -> access.getTitle() == null ? id : access.getTitle()).findFirst().orElse(id);
    }

    private String word(String id, Standing standing) {
        return switch (standing) {
            case OPENED -> plan.problem().open().contains(id) ? "open already" : "opened, turn "
                    + (turns().indexOf(id) + 1);
            case FREE -> "comes free";
            case POSSIBLE -> "could be opened besides";
            case NOT -> "could not be opened now";
        };
    }

    private List<String> turns() {
        return plan.items(PlanItem.Part.STRIP).stream().map(PlanItem::id).toList();
    }

    private Standing standing(String id) {
        var opened = new HashSet<>(plan.opened());
        var reach = new Reach(plan.problem());
        if (opened.contains(id)) {
            return Standing.OPENED;
        }
        return reach.holding(opened).contains(id) ? Standing.FREE : reach.canOpen(id, opened) ? Standing.POSSIBLE : Standing.NOT;
    }

    private String description() {
        return accesses.keySet().stream().map(id -> title(id) + ": " + word(id, standing(id)))
                .collect(Collectors.joining("; ")) + ".";
    }
}
