// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import java.util.List;
import java.util.function.Function;

/**
 * One kind of question: what is entered and how it is answered.
 *
 * @param id part of the ids of its widgets
 * @param title of its tab
 * @param what what it answers, in a sentence
 * @param inputs in order
 * @param ask answers; throws {@link org.benchlore.torque.answer.WrongInput}
 */
record QuestionKind(String id, String title, String what, List<Input> inputs, Function<Entered, Answered> ask) {
}
