// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.benchlore.check.Subject;
import org.benchlore.store.TextReferences;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/**
 * An element named in a text as {@code {kind:id}}.
 *
 * @param owner the element whose text it is
 * @param kind the word before the colon
 * @param id the id behind it
 */
record TextLink(EObject owner, String kind, String id) {

    /** Every such name in the long texts of an element. */
    static List<TextLink> of(Subject subject) {
        return subject.once(TextLink.class, TextLink::find);
    }

    private static List<TextLink> find(Subject subject) {
        var found = new ArrayList<TextLink>();
        for (var object : subject.everything()) {
            for (var attribute : Features.longTexts(object.eClass())) {
                add(object, attribute, found);
            }
        }
        return found;
    }

    /** Such names in the long texts of one element. */
    static List<TextLink> of(Subject subject, EObject owner) {
        return subject.once(ByOwner.class, ByOwner::find).links().getOrDefault(owner, List.of());
    }

    /** The names by the element whose text they stand in; elements are told apart by identity. */
    private record ByOwner(Map<EObject, List<TextLink>> links) {

        static ByOwner find(Subject subject) {
            var links = new IdentityHashMap<EObject, List<TextLink>>();
            TextLink.of(subject).forEach(link -> links.computeIfAbsent(link.owner(), owner -> new ArrayList<>()).add(link));
            return new ByOwner(links);
        }
    }

    private static void add(EObject owner, EAttribute attribute, List<TextLink> found) {
        if (owner.eGet(attribute) instanceof String text && text.indexOf('{') >= 0) {
            of(owner, text, found);
        }
    }

    private static void of(EObject owner, String text, List<TextLink> found) {
        var matcher = TextReferences.FORM.matcher(text);
        while (matcher.find()) {
            found.add(new TextLink(owner, matcher.group(1), matcher.group(2)));
        }
    }
}
