// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.benchlore.model.Kind;

/** Says of an id that names nothing what was looked for and which ids are near it. */
public final class UnknownId {

    private static final int MOST = 3;
    private static final double NEAR = 0.5;
    private static final int SAME_START = 3;
    private static final Pattern ZEROS = Pattern.compile("^0+(?=.)");

    private final Catalogue catalogue;
    private final List<Kind> kinds;

    /**
     * Looks among some kinds.
     *
     * @param catalogue the facts of the library
     * @param kinds the kinds that would do, the one to look for first; none for every kind
     */
    public UnknownId(Catalogue catalogue, Kind... kinds) {
        this.catalogue = catalogue;
        this.kinds = List.of(kinds);
    }

    /**
     * Says that an id names nothing.
     *
     * @param id what was typed
     * @param what what it should have named, such as 'machine or unit'
     * @return one sentence without a full stop, with up to three ids near it and how ids are found
     */
    public String says(String id, String what) {
        var near = near(id);
        return "There is no " + what + " '" + id + "'" + (near.isEmpty() ? "" : "; near it: " + String.join(", ", near))
                + "; 'find TEXT" + (kinds.isEmpty() ? "" : " --kind " + kinds.get(0).word()) + "' finds ids";
    }

    private List<String> near(String id) {
        return catalogue.rows().filter(row -> kinds.isEmpty() || kinds.contains(row.kind()))
                .filter(row -> nearness(id, row.id()) >= NEAR)
                .sorted(Comparator.comparingDouble((Row row) -> -nearness(id, row.id())).thenComparing(Row::id))
                .limit(MOST).map(Row::id).toList();
    }

    /**
     * How near two ids are: how far their parts are the same, over the longer one's parts.
     *
     * @param one an id
     * @param other another
     * @return 0 to 1
     */
    static double nearness(String one, String other) {
        var parts = parts(one);
        var others = parts(other);
        var shared = parts.stream().mapToDouble(part -> others.stream().mapToDouble(its -> alike(part, its)).max().orElse(0)).sum();
        return shared / Math.max(1, Math.max(parts.size(), others.size()));
    }

    private static List<String> parts(String id) {
        return Stream.of(id.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+|(?<=\\p{L})(?=\\p{N})")).filter(part -> !part.isEmpty())
                .map(part -> ZEROS.matcher(part).replaceFirst("")).toList();
    }

    /** The same, or begun alike: as much as the beginning is of the longer one. Numbers are the same or not. */
    private static double alike(String one, String other) {
        if (one.equals(other)) {
            return 1;
        }
        int same = 0;
        while (same < Math.min(one.length(), other.length()) && one.charAt(same) == other.charAt(same)) {
            same++;
        }
        return same < SAME_START || Character.isDigit(one.charAt(0)) ? 0 : (double) same / Math.max(one.length(), other.length());
    }
}
