// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;

import org.benchlore.measure.Wording;

/**
 * How strong a bolt is marked: a property class of ISO 898-1, a grade of SAE J429, or a class of stainless steel by
 * ISO 3506-1.
 *
 * @param family the standard
 * @param name the mark, such as {@code 10.9}, {@code 8} or {@code 70}
 */
public record PropertyClass(Family family, String name) {

    /** The standards known here, each with its marks. */
    public enum Family {
        /** Metric steel, ISO 898-1. */
        METRIC("class ", "ISO 898-1", "4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"),
        /** Inch steel, SAE J429. */
        SAE("grade ", "SAE J429", "2", "5", "5.2", "8", "8.2"),
        /** Stainless, ISO 3506-1. */
        STAINLESS("stainless class ", "ISO 3506-1", "50", "70", "80");

        private final String word;
        private final String standard;
        private final List<String> names;

        Family(String word, String standard, String... names) {
            this.word = word;
            this.standard = standard;
            this.names = List.of(names);
        }

        /** The standard that defines the marks. */
        public String standard() {
            return standard;
        }

        /** The marks, weakest first. */
        public List<String> names() {
            return names;
        }
    }

    private static final String EXAMPLE = "8.8, 10.9, grade 8 or A2-70";
    private static final int LONGEST = 24;
    private static final Pattern STAINLESS = Pattern.compile("(?:stainless ?)?(?:a ?[1-5] ?-? ?)?(50|70|80)");
    private static final Pattern SAE = Pattern.compile("(?:sae ?)?(?:j429 ?)?(?:grade ?|gr\\.? ?)?([0-9](?:\\.2)?)");
    private static final Pattern METRIC = Pattern.compile("(?:iso ?)?(?:898-1 ?)?(?:class ?|grade ?|gr\\.? ?)?"
            + "([0-9]{1,2}\\.[0-9])");

    public PropertyClass {
        Objects.requireNonNull(family);
        if (!family.names().contains(name)) {
            throw Wording.problem(name, "is no class of " + family.standard(), String.join(", ", family.names()));
        }
    }

    /**
     * Reads a mark as it stands on a bolt or in a list: {@code 8.8}, {@code class 10.9}, {@code Gr 8}, {@code A2-70}.
     *
     * @throws IllegalArgumentException with one plain sentence if it is none known here
     */
    public static PropertyClass parse(String text) {
        var trimmed = text == null ? "" : text.strip();
        if (trimmed.isEmpty()) {
            throw new IllegalArgumentException("No class is written here: write for example " + EXAMPLE + ".");
        }
        var plain = trimmed.length() > LONGEST ? "" : trimmed.toLowerCase(Locale.ROOT).replace(',', '.')
                .replaceAll("[‐‑–—−]", "-").replaceAll("\\s+", " ");
        for (var family : Family.values()) {
            var match = pattern(family).matcher(plain);
            if (match.matches() && family.names().contains(match.group(1))) {
                return new PropertyClass(family, match.group(1));
            }
        }
        throw Wording.problem(trimmed, "is no class known here", EXAMPLE);
    }

    private static Pattern pattern(Family family) {
        return switch (family) {
            case METRIC -> METRIC;
            case SAE -> SAE;
            case STAINLESS -> STAINLESS;
        };
    }

    /** The mark in words: {@code class 10.9}, {@code grade 8}, {@code stainless class 70}. */
    @Override
    public String toString() {
        return family.word + name;
    }
}
