// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Element;
import org.benchlore.model.TopElement;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Changes an element at random, as a person could: every edit leaves it fit to be saved. */
final class RandomEdits {

    private final Random random;
    private final String mark;
    private int count;
    /** Ids and words that were added and are still there. */
    final Set<String> added = new HashSet<>();
    /** Element id and field of each text that was set; a question mark where an element without an id was changed. */
    final Set<String> touched = new HashSet<>();

    RandomEdits(long seed, String mark) {
        this.random = new Random(seed);
        this.mark = mark;
    }

    void change(TopElement top, int edits, boolean mayRemove) {
        for (int i = 0; i < edits; i++) {
            switch (random.nextInt(mayRemove ? 6 : 4)) {
                case 0, 1 -> text(top);
                case 2 -> word(top);
                case 3 -> add(top);
                case 4 -> move(top);
                default -> remove(top);
            }
        }
    }

    private List<EObject> all(TopElement top) {
        var all = new ArrayList<EObject>(List.of(top));
        top.eAllContents().forEachRemaining(all::add);
        return all;
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private void text(TopElement top) {
        var owner = any(all(top));
        var fields = owner.eClass().getEAllAttributes().stream().filter(field -> !field.isMany() && isText(field)).toList();
        if (!fields.isEmpty()) {
            var field = any(fields);
            owner.eSet(field, mark + count++);
            touched.add(Copies.id(owner).orElse("?") + "." + field.getName());
        }
    }

    private static boolean isText(EAttribute field) {
        return field.getEAttributeType().getInstanceClass() == String.class && field != Literals.ELEMENT__ID;
    }

    private void word(TopElement top) {
        var owner = any(all(top));
        owner.eClass().getEAllAttributes().stream().filter(field -> field.isMany() && isText(field)).forEach(field -> {
            @SuppressWarnings("unchecked")
            var list = (List<String>) owner.eGet(field);
            var word = mark + count++;
            list.add(random.nextInt(list.size() + 1), word);
            added.add(word);
            if (Copies.id(owner).isEmpty()) {
                touched.add("?");
            }
        });
    }

    private void add(TopElement top) {
        var owner = any(all(top));
        var lists = owner.eClass().getEAllContainments().stream().filter(EReference::isMany).toList();
        if (lists.isEmpty()) {
            return;
        }
        var list = any(lists);
        var element = EcoreUtil.create(list.getEReferenceType());
        if (element instanceof Element inner) {
            inner.setId(mark + "-" + count++);
            added.add(inner.getId());
        } else {
            touched.add("?");
        }
        refer(element);
        @SuppressWarnings("unchecked")
        var contents = (List<EObject>) owner.eGet(list);
        contents.add(random.nextInt(contents.size() + 1), element);
    }

    private void refer(EObject element) {
        element.eClass().getEAllReferences().stream()
                .filter(reference -> reference.getEReferenceType() == Literals.PART && !reference.isMany())
                .forEach(reference -> element.eSet(reference,
                        References.to(Literals.PART, new Address("parts/" + mark + ".xmi", mark))));
    }

    private void move(TopElement top) {
        var lists = lists(top).stream().filter(list -> list.size() > 1).toList();
        if (!lists.isEmpty()) {
            var list = any(lists);
            list.move(random.nextInt(list.size()), random.nextInt(list.size()));
        }
    }

    private void remove(TopElement top) {
        var lists = lists(top).stream().filter(list -> !list.isEmpty()).toList();
        if (!lists.isEmpty()) {
            var list = any(lists);
            var going = list.get(random.nextInt(list.size()));
            all(top).forEach(owner -> unlink(owner, going));
            list.remove(going);
        }
    }

    private static void unlink(EObject owner, EObject going) {
        for (var reference : owner.eClass().getEAllReferences()) {
            if (reference.isContainment() || !owner.eIsSet(reference)) {
                continue;
            }
            if (owner.eGet(reference, false) instanceof List<?> many) {
                many.removeIf(target -> NewIds.isWithin((EObject) target, going));
            } else if (NewIds.isWithin((EObject) owner.eGet(reference, false), going)) {
                owner.eUnset(reference);
            }
        }
    }

    @SuppressWarnings("unchecked")
    private List<org.eclipse.emf.common.util.EList<EObject>> lists(TopElement top) {
        return all(top).stream().flatMap(owner -> owner.eClass().getEAllContainments().stream()
                .filter(EReference::isMany)
                .map(list -> (org.eclipse.emf.common.util.EList<EObject>) owner.eGet(list))).toList();
    }
}
