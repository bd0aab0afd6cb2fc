// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What stays out of a pack unless somebody chooses it. */
public enum Extra {
    /** Units with their serial and fleet numbers, and where a note was seen. */
    UNITS("serial and fleet numbers"),
    /** What customers were offered and who answered. */
    CUSTOMERS("what customers were offered"),
    /** Prices. */
    PRICES("prices"),
    /** Job records. */
    JOBS("job records"),
    /** Names of the people of the shop. */
    NAMES("names of people");

    private final String words;

    Extra(String words) {
        this.words = words;
    }

    /**
     * Returns what it is.
     *
     * @return plain words
     */
    public String words() {
        return words;
    }

    /**
     * Returns the word by which it is chosen.
     *
     * @return a lower-case word
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Finds it by its word.
     *
     * @param word a word such as {@code prices}
     * @return it, or empty
     */
    public static Optional<Extra> of(String word) {
        return Arrays.stream(values()).filter(extra -> extra.word().equalsIgnoreCase(word)).findFirst();
    }
}
