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
        read(Place.TITLE, row.title());
        read(Place.SYMPTOM, String.join("\n", row.symptoms()));
        read(Place.TEXT, text);
        read(Place.ABOUT, String.join("\n", about));
    }

    private void read(Place place, String text) {
        exact.put(place, Typed.words(analyzer, Fields.WORDS, text).stream().map(Typed.Word::exact).toList());
        stems.put(place, Typed.words(analyzer, Fields.ALL, text).stream().map(Typed.Word::exact).toList());
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
        return form.stems().isEmpty() ? exact.get(place).contains(form.words())
                : form.way() == Form.Way.TYPED ? stems.get(place).containsAll(form.stems())
                : Collections.indexOfSubList(stems.get(place), form.stems()) >= 0;
    }

    private Optional<String> longer(String beginning, Place place) {
        return beginning.isEmpty() ? Optional.empty()
                : exact.get(place).stream().filter(word -> word.startsWith(beginning)).findFirst();
    }

    private static String label(Form form, Group.Words group) {
        return switch (form.way()) {
            case TYPED, BEGINS -> form.words();
            case MEANS, NEAR -> form.words() + " (for " + group.typed() + ")";
        };
    }
}
