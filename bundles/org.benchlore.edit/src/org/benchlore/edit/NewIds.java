// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;

import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Element;
import org.benchlore.model.ElementId;
import org.benchlore.model.Titled;
import org.benchlore.store.TextReferences;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Gives new ids to elements that come into a file: unique in it, made by the library's rules. */
final class NewIds {

    private static final int TRIES = 1000;

    private final RandomGenerator random;
    private final Set<String> used = new HashSet<>();

    /**
     * Starts with the ids of a file.
     *
     * @param file the file's element
     * @param random source of the ends of ids
     */
    NewIds(EObject file, RandomGenerator random) {
        this.random = random;
        Copies.id(file).ifPresent(used::add);
        file.eAllContents().forEachRemaining(inner -> Copies.id(inner).ifPresent(used::add));
    }

    /**
     * Gives an element and everything in it new ids; links in its texts to what is in it follow.
     *
     * @param part an element that is in no file yet
     */
    void renew(EObject part) {
        var renewed = new HashMap<String, String>();
        renew(part, renewed);
        part.eAllContents().forEachRemaining(inner -> renew(inner, renewed));
        links(part, renewed);
        part.eAllContents().forEachRemaining(inner -> links(inner, renewed));
    }

    private void renew(EObject object, Map<String, String> renewed) {
        if (object instanceof Element element) {
            var fresh = fresh(element);
            if (element.getId() != null) {
                renewed.put(element.getId(), fresh);
            }
            element.setId(fresh);
        }
    }

    private String fresh(Element element) {
        var title = element instanceof Titled titled ? titled.getTitle() : null;
        var word = title == null || title.isBlank() ? kind(element) : title;
        for (int i = 0; i < TRIES; i++) {
            var id = ElementId.inner(word, random);
            if (used.add(id)) {
                return id;
            }
        }
        throw new IllegalArgumentException("No free id was found for '" + word + "': give it another title");
    }

    private static String kind(EObject object) {
        return object.eClass().getName().replaceAll("([a-z])([A-Z])", "$1-$2");
    }

    private static void links(EObject object, Map<String, String> renewed) {
        for (var attribute : object.eClass().getEAllAttributes()) {
            if (attribute.getEAttributeType() == Literals.LONG_TEXT && !attribute.isMany()
                    && object.eGet(attribute) instanceof String text) {
                object.eSet(attribute, linked(text, renewed));
            }
        }
    }

    private static String linked(String text, Map<String, String> renewed) {
        return TextReferences.FORM.matcher(text).replaceAll(link -> renewed.containsKey(link.group(2))
                ? "{" + link.group(1) + ":" + renewed.get(link.group(2)) + "}"
                : java.util.regex.Matcher.quoteReplacement(link.group()));
    }

    static boolean isWithin(EObject object, EObject part) {
        return EcoreUtil.isAncestor(part, object);
    }
}
