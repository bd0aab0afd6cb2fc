// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.benchlore.model.TopElement;
import org.benchlore.model.compare.Difference.Change;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Finds how two versions of one element differ, by id and field. */
public final class Differences {

    private final Keys before;
    private final Keys after;
    private final Words words;
    private final List<Difference> found = new ArrayList<>();

    private Differences(TopElement before, TopElement after, Words words) {
        this.before = new Keys("b", before, List.of());
        this.after = new Keys("a", after, List.of(this.before));
        this.words = words;
    }

    /**
     * Compares two versions.
     *
     * @param before the earlier version
     * @param after the later version
     * @param words says places and values
     * @return the differences in the order of the later version, what was removed at the end
     */
    public static List<Difference> between(TopElement before, TopElement after, Words words) {
        return new Differences(before, after, words).find();
    }

    private List<Difference> find() {
        for (var key : after.all()) {
            if (before.has(key)) {
                moved(key);
                changed(key);
            } else if (isTopmost(after, before, key)) {
                var object = after.object(key).orElseThrow();
                found.add(new Difference(Change.ADDED, words.place(object), Words.NOTHING, words.summary(object)));
            }
        }
        for (var place : after.places()) {
            reordered(place);
        }
        for (var key : before.all()) {
            if (isTopmost(before, after, key)) {
                var object = before.object(key).orElseThrow();
                found.add(new Difference(Change.REMOVED, words.place(object), words.summary(object), Words.NOTHING));
            }
        }
        return found;
    }

    private static boolean isTopmost(Keys holder, Keys other, String key) {
        return !other.has(key) && other.has(holder.place(key).owner());
    }

    private void moved(String key) {
        if (!Objects.equals(before.place(key), after.place(key))) {
            var old = before.object(key).orElseThrow();
            var now = after.object(key).orElseThrow();
            found.add(new Difference(Change.MOVED, words.place(now), words.place(old), words.place(now)));
        }
    }

    private void changed(String key) {
        var old = before.object(key).orElseThrow();
        var now = after.object(key).orElseThrow();
        for (var feature : now.eClass().getEAllStructuralFeatures()) {
            boolean contained = feature instanceof EReference reference && reference.isContainment();
            if (!contained && !Same.texts(old, feature).equals(Same.texts(now, feature))) {
                found.add(changed(old, now, feature));
            }
        }
    }

    private Difference changed(EObject old, EObject now, EStructuralFeature feature) {
        var first = words.value(old, feature);
        var second = words.value(now, feature);
        var change = Same.texts(old, feature).isEmpty() ? Change.ADDED
                : Same.texts(now, feature).isEmpty() ? Change.REMOVED : Change.CHANGED;
        return new Difference(change, words.place(now, feature), first, second);
    }

    /** As few elements as possible are called moved: those that are not on the longest row that kept its order. */
    private void reordered(Node.Place place) {
        var old = before.list(place).stream().filter(after.list(place)::contains).toList();
        var now = after.list(place).stream().filter(before.list(place)::contains).toList();
        var kept = longestKept(old, now);
        now.stream().filter(key -> !kept.contains(key)).forEach(key -> {
            var object = after.object(key).orElseThrow();
            found.add(new Difference(Change.MOVED, words.place(object),
                    "number " + (before.list(place).indexOf(key) + 1), "number " + (after.list(place).indexOf(key) + 1)));
        });
    }

    private static Set<String> longestKept(List<String> old, List<String> now) {
        var best = new ArrayList<List<String>>();
        var longest = List.<String>of();
        for (var key : now) {
            var row = List.<String>of();
            for (var earlier : best) {
                if (old.indexOf(earlier.get(earlier.size() - 1)) < old.indexOf(key) && earlier.size() > row.size()) {
                    row = earlier;
                }
            }
            var next = new ArrayList<>(row);
            next.add(key);
            best.add(next);
            longest = next.size() > longest.size() ? next : longest;
        }
        return new HashSet<>(longest);
    }
}
