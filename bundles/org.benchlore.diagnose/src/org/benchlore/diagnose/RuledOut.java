// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

/**
 * What looked like this and was not.
 *
 * @param note the note that says so
 * @param suspect the component or cause that was suspected
 * @param finding what was found
 */
public record RuledOut(Named note, Named suspect, String finding) {
}
