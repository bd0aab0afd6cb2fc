// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

/** The three versions of a merge, with one key for each element that is in any of them. */
record Versions(Keys base, Keys mine, Keys theirs) {

    static Versions of(EObject base, EObject mine, EObject theirs) {
        var first = new Keys("b", base, List.of());
        var second = new Keys("m", mine, List.of(first));
        return new Versions(first, second, new Keys("t", theirs, List.of(first, second)));
    }

    Keys side(Side side) {
        return side == Side.MINE ? mine : theirs;
    }

    /** Every key of any version, owners before what they hold. */
    Set<String> all() {
        var all = new LinkedHashSet<String>();
        Stream.of(mine, theirs, base).forEach(version -> version.all().forEach(all::add));
        return all;
    }

    Optional<EObject> any(String key) {
        return Stream.of(mine, theirs, base).map(version -> version.object(key)).flatMap(Optional::stream).findFirst();
    }

    /** Tells whether a side changed an element of the base, with all in it, moved it, or refers to it anew. */
    boolean isTouched(String key, Side side) {
        var version = side(side);
        return !Same.deep(base.object(key).orElseThrow(), version.object(key).orElseThrow())
                || !Objects.equals(base.place(key), version.place(key))
                || !referers(base, key).containsAll(referers(version, key));
    }

    /** Fields outside an element that refer to it or to something in it. */
    private static Set<String> referers(Keys version, String key) {
        var found = new HashSet<String>();
        for (var other : version.all()) {
            if (!version.isWithin(other, key)) {
                var owner = version.object(other).orElseThrow();
                owner.eClass().getEAllReferences().stream().filter(reference -> !reference.isContainment())
                        .filter(reference -> Targets.objects(owner, reference).stream().anyMatch(target ->
                                version.keyOf(target).filter(at -> version.isWithin(at, key)).isPresent()))
                        .forEach(reference -> found.add(other + "." + reference.getName()));
            }
        }
        return found;
    }
}
