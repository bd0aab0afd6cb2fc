// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

/** Names of the index's fields, and the version of what is in them. */
final class Fields {

    /** Raised whenever the fields or the analysis change: an index of another version is built again. */
    static final String VERSION = "1";

    /** Path of the file; the unit of update. */
    static final String PATH = "path";
    /** SHA-256 of the file's bytes when it was indexed. */
    static final String HASH = "hash";
    /** Kind of the element. */
    static final String KIND = "kind";
    /** Paths of the machines it is for; {@link #NO_MACHINE} if it names none. */
    static final String MACHINE = "machine";
    /** Marks an element that names no machine. */
    static final String NO_MACHINE = "-";
    /** Paths of the files it refers to. */
    static final String REFERENCES = "references";
    /** Codes on it, in the form without separators. */
    static final String CODE = "code";
    /** Its title, words reduced to their stem. */
    static final String TITLE = "title";
    /** Symptoms, stemmed. */
    static final String SYMPTOM = "symptom";
    /** Titles of what it refers to, stemmed. */
    static final String ABOUT = "about";
    /** All its other texts, stemmed and stored. */
    static final String TEXT = "text";
    /** Title, symptoms and texts, words as written: for words that are still being typed. */
    static final String WORDS = "words";
    /** Weight of its kind and status. */
    static final String WEIGHT = "weight";
    /** Marks documents that are laid over an index which another process owns. */
    static final String LAID_OVER = "over";

    private Fields() {
    }
}
