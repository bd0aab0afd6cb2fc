// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import java.util.List;

import org.benchlore.torque.answer.Field;

/**
 * One input of a question.
 *
 * @param field which one
 * @param label its name on the screen
 * @param hint shown while it is empty
 * @param required whether nothing can be answered without it
 * @param choices what is offered; anything else may be written unless it is fixed
 * @param fixed whether it must be one of the choices, and one is chosen from the beginning
 */
record Input(Field field, String label, String hint, boolean required, List<String> choices, boolean fixed) {

    static Input needed(Field field, String label, String hint) {
        return new Input(field, label, hint, true, List.of(), false);
    }

    static Input optional(Field field, String label, String hint) {
        return new Input(field, label, hint, false, List.of(), false);
    }

    static Input offered(Field field, String label, List<String> choices) {
        return new Input(field, label, "", false, choices, false);
    }

    static Input fixed(Field field, String label, List<String> choices) {
        return new Input(field, label, "", true, choices, true);
    }
}
