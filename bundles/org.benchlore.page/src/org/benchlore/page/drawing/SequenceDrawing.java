// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.benchlore.torque.Caution;
import org.benchlore.torque.sequence.Layout;
import org.benchlore.torque.sequence.Stages;
import org.benchlore.torque.sequence.TighteningSequence;

/**
 * Draws a tightening sequence: in each ring its turn, beside it its place; the first turn in a heavy ring; over a circle
 * dashed lines from the first turn to the fourth; below it stages, loosening and the caution in words.
 */
public final class SequenceDrawing {

    private static final double LEAST_WIDTH = 460;
    private static final double TYPE = 13;
    /** Large drawings shrink on paper, so their type grows with them. */
    private static final double TYPE_OVER_WIDTH = 0.022;
    private static final double LEADING = 1.4;
    private static final double MARGIN = 16;
    /** Letters of type in its own height, on average; a little cautious, so that no line is cut. */
    private static final double LETTER = 0.62;
    private static final int DRAWN_LEGS = 4;

    private final TighteningSequence sequence;
    private final Optional<Stages> stages;
    private final String place;
    private final List<Shape> shapes = new ArrayList<>();

    private SequenceDrawing(TighteningSequence sequence, Optional<Stages> stages, String place) {
        this.sequence = sequence;
        this.stages = stages;
        this.place = place;
    }

    /** The drawing of a sequence with its stages. */
    public static Drawing of(TighteningSequence sequence, Stages stages) {
        return new SequenceDrawing(sequence, Optional.of(stages), "").draw();
    }

    /**
     * The drawing of a sequence beside stages and a caution that stand elsewhere on the same page.
     *
     * @param sequence the sequence
     * @param place what is tightened
     */
    public static Drawing of(TighteningSequence sequence, String place) {
        return new SequenceDrawing(sequence, Optional.empty(), place).draw();
    }

    private Drawing draw() {
        var spots = Spots.of(sequence.layout());
        double width = Math.max(LEAST_WIDTH, spots.width());
        double right = (width - spots.width()) / 2;
        if (sequence.layout() instanceof Layout.Circle) {
            legs(spots, right);
        }
        for (int place = 1; place <= spots.all().size(); place++) {
            fastener(spots.all().get(place - 1), right, place);
        }
        double height = words(spots.height(), width);
        return new Drawing(width, height, "Tightening sequence, " + (place.isEmpty() ? "" : place + ", ")
                + sequence.layout().words(), description(), shapes);
    }

    private void legs(Spots spots, double right) {
        for (int turn = 1; turn < Math.min(DRAWN_LEGS, sequence.order().size()); turn++) {
            var from = spots.all().get(sequence.order().get(turn - 1) - 1);
            var to = spots.all().get(sequence.order().get(turn) - 1);
            shapes.add(new Shape.Dash(from.x() + right, from.y(), to.x() + right, to.y()));
        }
    }

    private void fastener(Spot spot, double right, int place) {
        int turn = sequence.turnOf(place);
        shapes.add(new Shape.Ring(spot.x() + right, spot.y(), Spots.RING, turn == 1 ? 4 : 1.5));
        shapes.add(new Shape.Label(spot.x() + right, spot.y(), turn > 99 ? 14 : 17, true, true, String.valueOf(turn)));
        shapes.add(new Shape.Label(spot.besideX() + right, spot.besideY(), 11, false, true, String.valueOf(place)));
    }

    private double words(double below, double width) {
        double type = Math.max(TYPE, width * TYPE_OVER_WIDTH);
        double y = below + type;
        int letters = (int) ((width - 2 * MARGIN) / (type * LETTER));
        for (var sentence : sentences()) {
            for (var line : lines(sentence, letters)) {
                shapes.add(new Shape.Label(MARGIN, y, type, sentence.equals(Caution.CHECK), false, line));
                y += LEADING * type;
            }
        }
        return y + MARGIN / 2;
    }

    private List<String> sentences() {
        var said = new ArrayList<String>();
        said.add("In the ring: turn. Beside it: place, " + sequence.numbering().replace("places ", "") + ".");
        if (sequence.layout() instanceof Layout.Listed) {
            said.add("Drawn in a row: how the places lie is to be seen on the part.");
        }
        // After an angle a closing pass would stretch the bolts further, so a page's own stages decide.
        said.add(stages.map(percents -> "Stages: " + percents + "; then " + sequence.closing() + ".")
                .orElse("Each stage in this order; a closing pass only if the stages say so."));
        said.add("Loosen in the reverse order, the highest turn first.");
        said.add(Character.toUpperCase(sequence.rule().words().charAt(0)) + sequence.rule().words().substring(1) + ".");
        stages.ifPresent(percents -> said.add(Caution.CHECK));
        return said;
    }

    /** Breaks a sentence into lines of at most so many letters, at blanks; a longer word stays whole. */
    static List<String> lines(String sentence, int letters) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (var word : sentence.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > letters) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private String description() {
        var said = sentences();
        return Character.toUpperCase(sequence.numbering().charAt(0)) + sequence.numbering().substring(1)
                + ", in the order in which they are tightened: "
                + sequence.order().stream().map(String::valueOf).collect(Collectors.joining(", ")) + ". "
                + String.join(" ", said.subList(1, said.size()));
    }
}
