// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.apache.lucene.analysis.Analyzer;
import org.benchlore.store.Row;

/** Says in words why a row is a hit: in which place each word stands, and in which form. */
final class Reasons {

    private final Analyzer analyzer;
    private final Map<Place, String> texts = new EnumMap<>(Place.class);
    private final Map<Place, List<String>> exact = new EnumMap<>(Place.class);
    private final Map<Place, List<String>> stems = new EnumMap<>(Place.class);

    /** Where a word may stand, the best place first. */
    private enum Place {
        TITLE("in the title"), SYMPTOM("in the symptoms"), TEXT("in the text"),
        ABOUT("in what it refers to");

        private final String words;

        Place(String words) {
            this.words = words;
        }
    }

    Reasons(Analyzer analyzer, Row row, String text, Collection<String> about) {
        this.analyzer = analyzer;
        texts.put(Place.TITLE, row.title());
        texts.put(Place.SYMPTOM, String.join("\n", row.symptoms()));
        texts.put(Place.TEXT, text);
        texts.put(Place.ABOUT, String.join("\n", about));
    }

    /** Most words stand in the title, so that the long texts need not be cut into words. */
    private List<String> exact(Place place) {
        return exact.computeIfAbsent(place, asked -> words(Fields.WORDS, asked));
    }

    private List<String> stems(Place place) {
        return stems.computeIfAbsent(place, asked -> words(Fields.ALL, asked));
    }

    private List<String> words(String field, Place place) {
        return Typed.words(analyzer, field, texts.get(place)).stream().map(Typed.Word::exact).toList();
    }

    List<String> of(List<Group> groups) {
        var reasons = new ArrayList<String>();
        var words = new EnumMap<Place, List<String>>(Place.class);
        for (var group : groups) {
            if (group instanceof Group.Code code) {
                reasons.add("code " + code.typed().toUpperCase(Locale.ROOT));
            } else if (group instanceof Group.Number number) {
                reasons.add("number with " + number.typed());
            } else {
                place((Group.Words) group, words);
            }
        }
        words.forEach((place, found) -> reasons.add(place.words + ": " + String.join(", ", found)));
        return List.copyOf(reasons);
    }

    private void place(Group.Words group, Map<Place, List<String>> words) {
        for (var place : Place.values()) {
            for (var form : group.forms()) {
                if (stands(form, place)) {
                    words.computeIfAbsent(place, unused -> new ArrayList<>()).add(label(form, group));
                    return;
                }
            }
        }
        for (var place : Place.values()) {
            var longer = longer(group.beginning(), place);
            if (longer.isPresent()) {
                words.computeIfAbsent(place, unused -> new ArrayList<>()).add(longer.get());
                return;
            }
        }
    }

    private boolean stands(Form form, Place place) {
        return form.stems().isEmpty() ? exact(place).contains(form.words())
                : form.way() == Form.Way.TYPED ? stems(place).containsAll(form.stems())
                : Collections.indexOfSubList(stems(place), form.stems()) >= 0;
    }

    private Optional<String> longer(String beginning, Place place) {
        return beginning.isEmpty() ? Optional.empty()
                : exact(place).stream().filter(word -> word.startsWith(beginning)).findFirst();
    }

    private static String label(Form form, Group.Words group) {
        return switch (form.way()) {
            case TYPED, BEGINS -> form.words();
            case MEANS, NEAR -> form.words() + " (for " + group.typed() + ")";
        };
    }
}
