// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.List;

/**
 * What is written that comes near in words to a complaint nobody has written of. It is no evidence: a person says whether it
 * is what was meant.
 *
 * @param finding the complaint
 * @param words what is written
 * @param causes the causes it is written of
 */
public record Near(Finding finding, String words, List<Named> causes) {

    /** Copies the list. */
    public Near {
        causes = List.copyOf(causes);
    }
}
