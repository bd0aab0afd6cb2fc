// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.benchlore.model.Kind;
import org.benchlore.model.Shop;
import org.benchlore.model.Unit;
import org.benchlore.store.Library;

/**
 * Takes out of texts what must not leave the shop: names of its people, serial and fleet numbers and names of its units.
 * Only whole words are taken, as they are written in the library.
 */
final class PrivateWords {

    private static final int SHORTEST = 4;
    private static final String PERSON = "(one of the shop)";
    private static final String UNIT = "(a machine of the shop)";

    private final Map<String, String> words = new LinkedHashMap<>();
    private final Pattern pattern;

    PrivateWords(Library library, PackRequest request) {
        if (!request.has(Extra.UNITS)) {
            library.catalogue().rows(Kind.UNIT).forEach(row -> library.top(row.id()).filter(Unit.class::isInstance)
                    .map(Unit.class::cast).ifPresent(this::unit));
        }
        if (!request.has(Extra.NAMES)) {
            library.top(Kind.SHOP.word()).filter(Shop.class::isInstance).map(Shop.class::cast).ifPresent(this::people);
        }
        var all = words.keySet().stream().sorted((a, b) -> b.length() - a.length()).map(Pattern::quote).collect(Collectors.joining("|"));
        pattern = all.isEmpty() ? null : Pattern.compile("(?<![\\p{L}\\p{N}])(?:" + all + ")(?![\\p{L}\\p{N}])");
    }

    private void unit(Unit unit) {
        put(unit.getSerial(), UNIT);
        put(unit.getFleetNumber(), UNIT);
        put(unit.getTitle(), UNIT);
        if (unit.getTitle() != null) {
            var name = unit.getTitle().split(",")[0];
            put(name, UNIT);
            put(name.toLowerCase(java.util.Locale.ROOT), UNIT);
        }
    }

    private void people(Shop shop) {
        shop.getPeople().forEach(person -> {
            put(person.getTitle(), PERSON);
            if (person.getTitle() != null) {
                for (var part : person.getTitle().split("\\s+")) {
                    put(part, PERSON);
                }
            }
        });
    }

    private void put(String word, String instead) {
        // A fleet number such as 17 is an ordinary number in most texts.
        if (word != null && word.strip().length() >= SHORTEST && !word.isBlank()) {
            words.putIfAbsent(word.strip(), instead);
        }
    }

    /** Returns the text without them. */
    String without(String text) {
        return text == null || pattern == null ? text
                : pattern.matcher(text).replaceAll(found -> Matcher.quoteReplacement(words.get(found.group())));
    }
}
