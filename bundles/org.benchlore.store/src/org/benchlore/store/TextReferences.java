// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;

/** Finds the elements that a text names as {@code {kind:id}}. */
public final class TextReferences {

    /** How an element is named in a text; group 1 is the kind, group 2 the id. */
    public static final Pattern FORM = Pattern.compile("\\{([a-z]{1,30}):\\s{0,3}([a-z0-9-]{1,64})\\s{0,3}\\}");

    private TextReferences() {
    }

    /**
     * Returns the elements that a text names, except steps, which stand in the same file.
     *
     * @param text any text
     * @return their addresses, whether they exist or not, in order, each once
     */
    public static Set<Address> in(String text) {
        var found = new LinkedHashSet<Address>();
        var matcher = FORM.matcher(text);
        while (matcher.find()) {
            var id = matcher.group(2);
            Kind.of(matcher.group(1)).ifPresent(kind -> found.add(new Address(path(kind, id), id)));
        }
        return found;
    }

    /**
     * Returns a text as it is read: elements by their titles, steps of the same file as 'another step'.
     *
     * @param text any text, or null
     * @param catalogue knows the titles
     * @return the text; an element that is not there stands as its id
     */
    public static String plain(String text, Catalogue catalogue) {
        return text == null ? "" : FORM.matcher(text).replaceAll(found -> Matcher.quoteReplacement(
                catalogue.byId(found.group(2)).map(Row::title)
                        .orElseGet(() -> "step".equals(found.group(1)) ? "another step" : found.group(2))));
    }

    /** An id that cannot be one of its kind leads to a file that does not exist, and is reported as such. */
    private static String path(Kind kind, String id) {
        try {
            return kind.path(id);
        } catch (IllegalArgumentException e) {
            return kind.folder() + "/" + id + Kind.ENDING;
        }
    }
}
