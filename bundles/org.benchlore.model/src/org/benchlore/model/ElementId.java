// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model;

import java.util.Locale;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.regex.Pattern;

/**
 * Rules for the identity of elements: lower-case ASCII letters, digits and hyphens, 1 to 64 characters, starting
 * with a letter, never a device name of an operating system, since an id is also a file name.
 */
public final class ElementId {

    /** Greatest length of an id, in characters. */
    public static final int MAX_LENGTH = 64;

    private static final Pattern FORM = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|com[0-9]|lpt[0-9]");
    private static final Set<Kind> DATED = Set.of(Kind.NOTE, Kind.JOB);
    private static final String SUFFIX_LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int SUFFIX_LENGTH = 4;

    private ElementId() {
    }

    /**
     * Returns the id if it is well formed.
     *
     * @param id the id as written
     * @return the same id
     * @throws IllegalArgumentException with a plain sentence if it is not well formed
     */
    public static String check(String id) {
        if (id == null || id.length() > MAX_LENGTH || !FORM.matcher(id).matches()) {
            throw new IllegalArgumentException("'" + id + "' is no id: write 1 to " + MAX_LENGTH
                    + " lower-case letters a-z, digits and single hyphens, beginning with a letter");
        }
        if (DEVICE.matcher(id).matches()) {
            throw new IllegalArgumentException("'" + id + "' is no id: it is a device name on some systems");
        }
        return id;
    }

    /**
     * Makes a new id from a title. Notes and jobs carry their year, and they and steps carry a random suffix, so
     * that two people who write at the same time do not choose the same one.
     *
     * @param kind the kind of the new element
     * @param title what people call it; may be empty
     * @param year the year of a note or a job
     * @param random source of the suffix
     * @return a well-formed id
     */
    public static String create(Kind kind, String title, int year, RandomGenerator random) {
        if (!DATED.contains(kind)) {
            return fit(slug(title, kind.word()), MAX_LENGTH);
        }
        var head = kind.word() + "-" + year + "-" + slug(title, "untitled");
        return fit(head, MAX_LENGTH - SUFFIX_LENGTH - 1) + "-" + suffix(random);
    }

    /**
     * Makes a new id for an inner element such as a step.
     *
     * @param word what it is, such as {@code step}
     * @param random source of the suffix
     * @return a well-formed id
     */
    public static String inner(String word, RandomGenerator random) {
        return fit(slug(word, "x"), MAX_LENGTH - SUFFIX_LENGTH - 1) + "-" + suffix(random);
    }

    private static String slug(String title, String otherwise) {
        var text = java.text.Normalizer.normalize(title, java.text.Normalizer.Form.NFD).toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        if (text.isEmpty() || DEVICE.matcher(text).matches()) {
            return otherwise;
        }
        return Character.isDigit(text.charAt(0)) ? "x" + text : text;
    }

    private static String fit(String id, int length) {
        return id.length() <= length ? id : id.substring(0, length).replaceAll("-+$", "");
    }

    private static String suffix(RandomGenerator random) {
        var letters = new StringBuilder();
        for (int i = 0; i < SUFFIX_LENGTH; i++) {
            letters.append(SUFFIX_LETTERS.charAt(random.nextInt(SUFFIX_LETTERS.length())));
        }
        return letters.toString();
    }
}
