// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import java.util.Map;

import org.benchlore.torque.answer.Field;

/**
 * What stands in the inputs of a question.
 *
 * @param words by input; what is missing is empty
 */
record Entered(Map<Field, String> words) {

    Entered {
        words = Map.copyOf(words);
    }

    String get(Field field) {
        return words.getOrDefault(field, "");
    }
}
