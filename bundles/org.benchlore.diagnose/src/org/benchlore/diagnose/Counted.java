// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

/**
 * How often a cause was met here.
 *
 * @param events cases that were met, each once however many papers speak of it
 * @param of among about how many, 0 where nobody counted
 * @param prior how likely that makes it before anything was found
 * @param worth how many cases that figure stands on, the author's own included
 * @param frequency the book's own word, such as 'often', or empty
 * @param relatives cases on other machines of the family, which are not among the events and count for less
 */
public record Counted(int events, int of, double prior, double worth, String frequency, int relatives) {
}
