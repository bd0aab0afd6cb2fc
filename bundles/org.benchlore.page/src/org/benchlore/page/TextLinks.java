// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.BookPackage;
import org.benchlore.model.Element;
import org.benchlore.model.Kind;
import org.benchlore.model.Step;
import org.benchlore.model.TopElement;
import org.benchlore.store.Library;
import org.benchlore.store.TextReferences;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

/**
 * Finds {@code {kind:id}} in a text. The kind is that of a top-level element or the name of an inner one, such as
 * {@code step} or {@code component}; braces around anything else stay as they were written.
 */
final class TextLinks {


    private final Library library;
    private final TopElement own;
    private final Links links;

    TextLinks(Library library, TopElement own, Links links) {
        this.library = library;
        this.own = own;
        this.links = links;
    }

    List<Span> of(String text, EObject from) {
        var spans = new ArrayList<Span>();
        var matcher = TextReferences.FORM.matcher(text);
        int done = 0;
        while (matcher.find()) {
            if (isKnown(matcher.group(1))) {
                words(text.substring(done, matcher.start()), spans);
                spans.addAll(link(matcher.group(1), matcher.group(2), from));
                done = matcher.end();
            }
        }
        words(text.substring(done), spans);
        return List.copyOf(spans);
    }

    private static void words(String text, List<Span> spans) {
        if (!text.isEmpty()) {
            spans.add(Span.of(text));
        }
    }

    private static boolean isKnown(String word) {
        return Kind.of(word).isPresent() || ((EPackage) BookPackage.eINSTANCE).getEClassifiers().stream()
                .anyMatch(type -> isElement(type) && type.getName().toLowerCase(Locale.ROOT).equals(word));
    }

    private static boolean isElement(Object type) {
        return type instanceof EClass it && BookPackage.Literals.ELEMENT.isSuperTypeOf(it);
    }

    private List<Span> link(String word, String id, EObject from) {
        return find(word, id).map(element -> element instanceof Step step ? links.step(step, from) : links.to(element))
                .orElseGet(() -> Spans.of(id + Texts.NOT_IN_LIBRARY));
    }

    private Optional<EObject> find(String word, String id) {
        if (Kind.of(word).isPresent()) {
            return library.top(id).map(EObject.class::cast);
        }
        return inOwn(id).or(() -> library.catalogue().rows().filter(row -> row.innerIds().contains(id)).findFirst()
                .flatMap(row -> library.element(new Address(row.path(), id))));
    }

    private Optional<EObject> inOwn(String id) {
        for (var all = own.eAllContents(); all.hasNext();) {
            if (all.next() instanceof Element element && id.equals(element.getId())) {
                return Optional.of(element);
            }
        }
        return Optional.empty();
    }
}
