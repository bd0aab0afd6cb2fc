// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.List;

import org.benchlore.model.TopElement;

/**
 * What a merge came to.
 *
 * @param element a new element that holds what both sides changed; it shares nothing with the versions
 * @param conflicts the questions, in the order of the file; where no answer was given, mine was taken
 * @param open those of them that no answer was given to
 */
public record MergeResult(TopElement element, List<MergeConflict> conflicts, List<MergeConflict> open) {
}
