// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.List;

/**
 * What is known when a note is begun.
 *
 * @param text what was written already, may be empty
 * @param about what goes into its fields
 * @param offered what is only proposed, to be put in by a key
 */
public record NoteStart(String text, List<Proposal> about, List<Proposal> offered) {

    /** Nothing is known but the place where somebody stands. */
    public static final NoteStart NOTHING = written("");

    /** Copies the lists; what goes in is not offered as well. */
    public NoteStart {
        var filled = about.stream().distinct().toList();
        about = filled;
        offered = offered.stream().distinct().filter(one -> !filled.contains(one)).toList();
    }

    /**
     * Begins with some words.
     *
     * @param text what was written already
     * @return a start that fills no field by itself
     */
    public static NoteStart written(String text) {
        return new NoteStart(text, List.of(), List.of());
    }

    /**
     * Tells whether anything is known.
     *
     * @return true if there is neither a word nor a field
     */
    public boolean isEmpty() {
        return text.isEmpty() && about.isEmpty() && offered.isEmpty();
    }
}
