// SPDX-License-Identifier: EPL-2.0
/** Differences of two versions of an element in words, and the three-way merge, by id and field. */
package org.benchlore.model.compare;
