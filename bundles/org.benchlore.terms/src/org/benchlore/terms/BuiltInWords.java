// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The list of general maintenance English that comes with the program; its form is told at its head. */
public final class BuiltInWords {
    static final String RESOURCE = "maintenance-words.txt";

    private BuiltInWords() {
    }

    /**
     * Returns the entries in the list's order.
     *
     * @throws IllegalStateException if the program was put together without the list
     */
    public static List<WordEntry> entries() {
        return lines().stream().filter(BuiltInWords::isEntry).map(WordEntry::parse).toList();
    }

    private static boolean isEntry(String line) {
        return !line.isBlank() && !line.startsWith("#");
    }

    static List<String> lines() {
        try (InputStream stream = BuiltInWords.class.getResourceAsStream(RESOURCE)) {
            if (stream == null) {
                throw new IllegalStateException("The list " + RESOURCE + " is not in the program; install it again");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException("The list " + RESOURCE + " cannot be read; install the program again", e);
        }
    }
}
