// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

/** How the words of one entry of a word list stand to each other. */
public enum WordKind {
    /** Short forms, then the full word; found both ways. */
    SHORT,
    /** One word written in several ways; found both ways. */
    SPELLING,
    /** Different words for the same thing; found both ways. */
    SAME,
    /** Misspellings, then the right word; the right word never leads to a misspelling. */
    SLIP
}
