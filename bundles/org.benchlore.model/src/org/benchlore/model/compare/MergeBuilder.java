// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.benchlore.model.compare.MergeConflict.What;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Builds the merged element: every kept element anew, its fields merged one by one. */
final class MergeBuilder {

    private final Versions versions;
    private final Layout layout;
    private final Answers answers;
    private final Words words;
    private final Map<String, EObject> made = new HashMap<>();

    MergeBuilder(Versions versions, Layout layout, Answers answers, Words words) {
        this.versions = versions;
        this.layout = layout;
        this.answers = answers;
        this.words = words;
    }

    EObject build() {
        layout.places().keySet().forEach(key ->
                made.put(key, EcoreUtil.create(versions.any(key).orElseThrow().eClass())));
        made.keySet().stream().sorted(java.util.Comparator.comparing(List.copyOf(versions.all())::indexOf))
                .forEach(this::fill);
        return made.get(Keys.ROOT);
    }

    private void fill(String key) {
        for (var feature : made.get(key).eClass().getEAllStructuralFeatures()) {
            if (feature instanceof EReference reference && reference.isContainment()) {
                contain(key, reference);
            } else if (feature.isMany()) {
                many(key, feature);
            } else {
                single(key, feature);
            }
        }
    }

    private void single(String key, EStructuralFeature feature) {
        var mine = texts(versions.mine(), key, feature);
        var theirs = texts(versions.theirs(), key, feature);
        var base = Optional.of(Same.texts(versions.base().object(key)
                .orElseGet(() -> EcoreUtil.create(made.get(key).eClass())), feature));
        var winner = mine.isEmpty() ? Side.THEIRS
                : theirs.isEmpty() || mine.equals(theirs) || theirs.equals(base) ? Side.MINE
                : mine.equals(base) ? Side.THEIRS : value(key, feature);
        set(key, feature, versions.side(winner));
    }

    private Side value(String key, EStructuralFeature feature) {
        var mine = versions.mine().object(key).orElseThrow();
        var theirs = versions.theirs().object(key).orElseThrow();
        var before = versions.base().object(key).map(object -> words.value(object, feature)).orElse(Words.NOTHING);
        return answers.ask(new MergeConflict(key + "." + feature.getName(), What.VALUE, words.place(mine, feature),
                before, words.value(mine, feature), words.value(theirs, feature)));
    }

    private void set(String key, EStructuralFeature feature, Keys from) {
        var owner = from.object(key).orElseThrow();
        if (feature instanceof EReference reference) {
            Targets.objects(owner, reference).stream().map(target -> copied(target, from)).flatMap(Optional::stream)
                    .forEach(target -> made.get(key).eSet(feature, target));
        } else if (owner.eIsSet(feature)) {
            made.get(key).eSet(feature, owner.eGet(feature));
        }
    }

    /** An element of the file becomes the new one, or nothing if the merge does not keep it. */
    private Optional<EObject> copied(EObject target, Keys from) {
        if (!target.eIsProxy()) {
            return from.keyOf(target).map(made::get);
        }
        var proxy = (InternalEObject) EcoreUtil.create(target.eClass());
        proxy.eSetProxyURI(((InternalEObject) target).eProxyURI());
        return Optional.of(proxy);
    }

    private void many(String key, EStructuralFeature feature) {
        var merge = new ListMerge(counted(texts(versions.base(), key, feature).orElse(List.of())),
                side(key, feature, Side.MINE), side(key, feature, Side.THEIRS));
        var members = merge.members();
        var values = new LinkedHashMap<String, Object>();
        List.of(versions.theirs(), versions.mine()).forEach(version -> values.putAll(values(version, key, feature)));
        var order = merge.order(members, () -> order(key, feature));
        list(made.get(key), feature).addAll(order.stream().map(values::get).filter(Objects::nonNull).toList());
    }

    /** The entries of a side; where it does not hold the element, those of the other, so that nothing is removed. */
    private List<String> side(String key, EStructuralFeature feature, Side side) {
        var other = side == Side.MINE ? versions.theirs() : versions.mine();
        return counted(texts(versions.side(side), key, feature).or(() -> texts(other, key, feature)).orElse(List.of()));
    }

    private Map<String, Object> values(Keys version, String key, EStructuralFeature feature) {
        var values = new LinkedHashMap<String, Object>();
        version.object(key).ifPresent(owner -> {
            var entries = counted(Same.texts(owner, feature));
            var objects = (List<?>) owner.eGet(feature, false);
            for (int i = 0; i < entries.size(); i++) {
                values.put(entries.get(i), feature instanceof EAttribute ? objects.get(i)
                        : copied((EObject) objects.get(i), version).orElse(null));
            }
        });
        return values;
    }

    private static Optional<List<String>> texts(Keys version, String key, EStructuralFeature feature) {
        return version.object(key).map(object -> Same.texts(object, feature));
    }

    /** Makes every entry of a list of its own, so that a value may stand twice. */
    private static List<String> counted(List<String> texts) {
        var seen = new HashMap<String, Integer>();
        return texts.stream().map(text -> seen.merge(text, 1, Integer::sum) + " " + text).toList();
    }

    private Side order(String key, EStructuralFeature feature) {
        var mine = versions.mine().object(key).orElseThrow();
        var theirs = versions.theirs().object(key).orElseThrow();
        var before = versions.base().object(key).map(object -> told(object, feature)).orElse(Words.NOTHING);
        return answers.ask(new MergeConflict(key + "." + feature.getName() + ":order", What.ORDER,
                words.place(mine, feature), before, told(mine, feature), told(theirs, feature)));
    }

    private String told(EObject owner, EStructuralFeature feature) {
        return feature instanceof EReference reference && reference.isContainment()
                ? Words.joined(Targets.objects(owner, reference).stream().map(words::summary).toList())
                : words.value(owner, feature);
    }

    private void contain(String key, EReference reference) {
        var place = new Node.Place(key, reference);
        var members = new LinkedHashSet<>(layout.in(place));
        if (members.isEmpty()) {
            return;
        }
        if (!reference.isMany()) {
            made.get(key).eSet(reference, made.get(members.iterator().next()));
            return;
        }
        var merge = new ListMerge(versions.base().list(place), versions.mine().list(place), versions.theirs().list(place));
        var order = new ArrayList<>(merge.order(members, () -> order(key, reference)));
        list(made.get(key), reference).addAll(order.stream().map(made::get).toList());
    }

    @SuppressWarnings("unchecked")
    private static List<Object> list(EObject owner, EStructuralFeature feature) {
        return (List<Object>) owner.eGet(feature);
    }
}
