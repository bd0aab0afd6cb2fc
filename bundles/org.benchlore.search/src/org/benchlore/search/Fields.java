// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

/** Names of the index's fields, and the version of what is in them. */
final class Fields {

    /** Raised whenever the fields or the analysis change: an index of another version is built again. */
    static final String VERSION = "8";

    /** Path of the file; the unit of update. */
    static final String PATH = "path";
    /** SHA-256 of the file's bytes when it was indexed. */
    static final String HASH = "hash";
    /** Paths of the files it refers to. */
    static final String REFERENCES = "references";
    /** Codes on it, in the form without separators. */
    static final String CODE = "code";
    /** Part, tool and serial numbers, without separators, each from every character on: found by any piece. */
    static final String NUMBER = "number";
    /** Every word in it and the titles of what it refers to, reduced to their stem. */
    static final String ALL = "all";
    /** Its title and symptoms, stemmed. */
    static final String HEAD = "head";
    /** Every word as written: for words that are still being typed or misspelt. */
    static final String WORDS = "words";
    /** The first two and three letters of every word. */
    static final String START = "start";
    /** The same of every word of the title. */
    static final String TITLE_START = "titlestart";
    /** Pieces of the words of short texts, three to five letters with the ends marked. */
    static final String GRAMS = "grams";
    /** All its texts as they are, stored for passages. */
    static final String TEXT = "text";
    /** Weight of its kind and status. */
    static final String WEIGHT = "weight";
    /** Marks documents that are laid over an index which another process owns. */
    static final String LAID_OVER = "over";

    private Fields() {
    }
}
