// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import java.util.Optional;

import org.benchlore.page.drawing.Drawing;
import org.benchlore.torque.answer.Answer;

/**
 * An answer, and the drawing that belongs to it.
 *
 * @param answer the answer
 * @param drawing of a sequence
 */
record Answered(Answer answer, Optional<Drawing> drawing) {

    static Answered of(Answer answer) {
        return new Answered(answer, Optional.empty());
    }
}
