// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import org.benchlore.model.GlossaryEntry;
import org.benchlore.model.Titled;
import org.benchlore.model.TopElement;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;

/**
 * Every text of an element that people wrote, its title and symptoms apart. A new attribute needs no line here. Words
 * of the glossary that nobody explained are left out: they lead to other elements and say nothing themselves.
 */
final class Texts {

    private static final Set<String> SEPARATE = Set.of("id", "title", "symptoms", "reviewedHash", "file");

    private final Map<EClass, List<EAttribute>> attributes = new ConcurrentHashMap<>();

    List<String> of(TopElement top) {
        var texts = new ArrayList<String>();
        add(top, texts);
        top.eAllContents().forEachRemaining(inner -> {
            if (inner instanceof GlossaryEntry entry && entry.getText() == null) {
                return;
            }
            if (inner instanceof Titled titled && titled.getTitle() != null) {
                texts.add(titled.getTitle());
            }
            add(inner, texts);
        });
        return texts;
    }

    private void add(EObject object, List<String> texts) {
        for (var attribute : attributes.computeIfAbsent(object.eClass(), Texts::written)) {
            if (object.eIsSet(attribute)) {
                var value = object.eGet(attribute);
                for (var one : value instanceof Collection<?> many ? many : List.of(value)) {
                    texts.add(one.toString());
                }
            }
        }
    }

    private static List<EAttribute> written(EClass type) {
        return type.getEAllAttributes().stream()
                .filter(attribute -> attribute.getEAttributeType().getInstanceClass() == String.class)
                .filter(attribute -> !SEPARATE.contains(attribute.getName())).toList();
    }
}
