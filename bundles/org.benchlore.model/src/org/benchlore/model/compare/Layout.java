// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.benchlore.model.compare.MergeConflict.What;

/** Decides which elements a merge keeps and in which place each of them stands. */
final class Layout {

    private final Versions versions;
    private final Answers answers;
    private final Words words;
    private final Map<String, Boolean> kept = new HashMap<>();
    private final Map<String, Node.Place> places = new LinkedHashMap<>();

    Layout(Versions versions, Answers answers, Words words) {
        this.versions = versions;
        this.answers = answers;
        this.words = words;
        versions.all().stream().filter(this::isKept).forEach(key -> places.put(key, place(key)));
        breakCircles();
        dropHomeless();
        onePerSinglePlace();
    }

    /** Kept elements with their places, owners not always first. */
    Map<String, Node.Place> places() {
        return places;
    }

    boolean has(String key) {
        return places.containsKey(key);
    }

    Set<String> in(Node.Place place) {
        return places.entrySet().stream().filter(entry -> place.equals(entry.getValue())).map(Map.Entry::getKey)
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
    }

    private boolean isKept(String key) {
        var known = kept.get(key);
        if (known == null) {
            known = decide(key);
            kept.put(key, known);
        }
        return known;
    }

    private boolean decide(String key) {
        boolean mine = versions.mine().has(key);
        boolean theirs = versions.theirs().has(key);
        if (mine == theirs || !versions.base().has(key)) {
            return mine || theirs;
        }
        var holder = mine ? Side.MINE : Side.THEIRS;
        var owner = versions.side(holder).place(key).owner();
        if (isRemovedByOther(owner, holder)) {
            return isKept(owner);
        }
        return versions.isTouched(key, holder) && removedOrChanged(key, holder) == holder;
    }

    private boolean isRemovedByOther(String key, Side holder) {
        var other = holder == Side.MINE ? versions.theirs() : versions.mine();
        return versions.base().has(key) && !other.has(key);
    }

    private Side removedOrChanged(String key, Side holder) {
        var object = versions.side(holder).object(key).orElseThrow();
        var before = words.summary(versions.base().object(key).orElseThrow());
        var changed = words.summary(object);
        var id = key + ":removed";
        return answers.ask(holder == Side.MINE
                ? new MergeConflict(id, What.REMOVED_OR_CHANGED, words.place(object), before, changed, "removed")
                : new MergeConflict(id, What.REMOVED_OR_CHANGED, words.place(object), before, "removed", changed));
    }

    private Node.Place place(String key) {
        var mine = versions.mine();
        var theirs = versions.theirs();
        if (!mine.has(key) || !theirs.has(key)) {
            return mine.has(key) ? mine.place(key) : theirs.place(key);
        }
        if (Objects.equals(mine.place(key), theirs.place(key)) || isUnmoved(key, theirs)) {
            return mine.place(key);
        }
        return isUnmoved(key, mine) || moved(key) == Side.THEIRS ? theirs.place(key) : mine.place(key);
    }

    private boolean isUnmoved(String key, Keys version) {
        return versions.base().has(key) && Objects.equals(versions.base().place(key), version.place(key));
    }

    private Side moved(String key) {
        var mine = versions.mine().object(key).orElseThrow();
        var theirs = versions.theirs().object(key).orElseThrow();
        var before = versions.base().object(key).map(words::place).orElse(Words.NOTHING);
        return answers.ask(new MergeConflict(key + ":place", What.PLACE, words.label(mine), before, words.place(mine),
                words.place(theirs)));
    }

    /** Two moves can put each of two elements into the other: then one side's places hold for the whole circle. */
    private void breakCircles() {
        for (var circle = circle(); !circle.isEmpty(); circle = circle()) {
            var side = moved(circle.get(0));
            circle.stream().filter(key -> versions.side(side).has(key))
                    .forEach(key -> places.put(key, versions.side(side).place(key)));
        }
    }

    private List<String> circle() {
        for (var key : places.keySet()) {
            var seen = new HashSet<String>();
            var at = key;
            while (at != null && seen.add(at)) {
                at = Optional.ofNullable(places.get(at)).map(Node.Place::owner).orElse(null);
            }
            if (at != null) {
                return seen.stream().filter(one -> isOnCircle(one)).sorted().toList();
            }
        }
        return List.of();
    }

    private boolean isOnCircle(String key) {
        var seen = new HashSet<String>();
        var at = places.get(key).owner();
        while (seen.add(at) && !at.equals(key)) {
            at = Optional.ofNullable(places.get(at)).map(Node.Place::owner).orElse(key + "-");
        }
        return at.equals(key);
    }

    /** What was moved into something that the answers removed goes back to where it was, if that is still there. */
    private void dropHomeless() {
        for (var key : List.copyOf(places.keySet())) {
            var place = places.get(key);
            if (place != null && !places.containsKey(place.owner())) {
                var before = versions.base().place(key);
                if (before != null && places.containsKey(before.owner())) {
                    places.put(key, before);
                } else {
                    removeWithin(key);
                }
            }
        }
    }

    private void removeWithin(String key) {
        places.remove(key);
        List.copyOf(places.keySet()).stream()
                .filter(other -> places.get(other) != null && places.get(other).owner().equals(key))
                .forEach(this::removeWithin);
    }

    private void onePerSinglePlace() {
        for (var place : Set.copyOf(places.values().stream().filter(Objects::nonNull).toList())) {
            var holders = List.copyOf(in(place));
            if (!place.reference().isMany() && holders.size() > 1) {
                var side = which(place, holders);
                holders.stream().filter(key -> !versions.side(side).list(place).contains(key)).forEach(this::removeWithin);
            }
        }
    }

    private Side which(Node.Place place, List<String> holders) {
        var mine = summary(versions.mine(), place);
        var theirs = summary(versions.theirs(), place);
        var where = words.place(versions.any(holders.get(0)).orElseThrow());
        return answers.ask(new MergeConflict(place.key() + ":which", What.PLACE, where,
                summary(versions.base(), place), mine, theirs));
    }

    private String summary(Keys version, Node.Place place) {
        return Words.joined(version.list(place).stream().map(key -> words.summary(version.object(key).orElseThrow()))
                .toList());
    }
}
