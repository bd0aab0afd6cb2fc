// SPDX-License-Identifier: EPL-2.0
/** What a text says, matched by words that mean the same. */
package org.benchlore.check.words;
