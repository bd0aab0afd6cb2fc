// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import org.benchlore.store.Row;

/**
 * One element that was found.
 *
 * @param row its facts
 * @param score how well it fits; comparable within one answer only
 * @param whole whether it holds every word typed, in one form or another
 */
public record Hit(Row row, float score, boolean whole) {
}
