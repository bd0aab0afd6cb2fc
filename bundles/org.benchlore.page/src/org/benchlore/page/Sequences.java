// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.Optional;

import org.benchlore.model.Fastening;
import org.benchlore.page.drawing.Drawing;
import org.benchlore.page.drawing.SequenceDrawing;
import org.benchlore.torque.sequence.TighteningSequence;

/**
 * Draws the order in which the fasteners of a place are tightened: round a circle, or as somebody numbered them. How
 * many rows a rectangle has is not recorded, so it is not drawn.
 */
final class Sequences {

    private Sequences() {
    }

    /** The drawing; empty where nothing says how they lie, or what is written is no order. */
    static Optional<Drawing> drawing(Fastening fastening) {
        try {
            return sequence(fastening).map(sequence -> SequenceDrawing.of(sequence, Names.of(fastening)));
        } catch (IllegalArgumentException e) {
            // Two or a hundred in a circle, a place twice in an order: the line above says what is written.
            return Optional.empty();
        }
    }

    private static Optional<TighteningSequence> sequence(Fastening fastening) {
        return switch (fastening.getPattern()) {
            case CIRCLE -> Optional.ofNullable(fastening.getCount()).map(TighteningSequence::circle);
            case OWN_ORDER -> Optional.ofNullable(fastening.getOrder()).map(TighteningSequence::own);
            default -> Optional.empty();
        };
    }
}
