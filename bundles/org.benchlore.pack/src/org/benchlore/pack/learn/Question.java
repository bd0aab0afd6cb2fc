// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.learn;

/**
 * A question that a mentor asks back, with the answer that the procedure gives.
 *
 * @param question a question that can be answered in a sentence
 * @param answer what the procedure says
 */
public record Question(String question, String answer) {
}
