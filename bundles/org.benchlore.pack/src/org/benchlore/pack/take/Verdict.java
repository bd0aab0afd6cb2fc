// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.take;

/** What a file of a pack is to a library. */
public enum Verdict {
    /** The library does not have it. */
    NEW("new"),
    /** The library has it as it is. */
    SAME("same"),
    /** The library has what an earlier pack brought, untouched since; the pack brings a later one. */
    CHANGED("changed"),
    /** The library has a later one. */
    OLDER("older"),
    /** Both were changed, or both were made under one id: a person decides. */
    CONFLICT("conflict");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /**
     * Returns the verdict as a word.
     *
     * @return lower case
     */
    public String word() {
        return word;
    }
}
