// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

/**
 * Gives every element of a version a key by which it is found in the other versions: its id, or, where it has none, the
 * key of its partner in the list of the version before.
 */
final class Keys {

    /** Key of the file's own element. */
    static final String ROOT = "";

    private final String side;
    private final List<Keys> others;
    private final Map<String, Node> nodes = new LinkedHashMap<>();
    private final Map<EObject, String> keys = new IdentityHashMap<>();
    private final Map<Node.Place, List<String>> lists = new LinkedHashMap<>();

    /**
     * Reads a version.
     *
     * @param side a letter that keeps the keys of new elements apart from those of other versions
     * @param root the file's element
     * @param others versions read before, whose keys are taken over
     */
    Keys(String side, EObject root, List<Keys> others) {
        this.side = side;
        this.others = others;
        add(new Node(ROOT, root, null));
    }

    private void add(Node node) {
        nodes.put(node.key(), node);
        keys.put(node.object(), node.key());
        for (var reference : node.object().eClass().getEAllContainments()) {
            addAll(new Node.Place(node.key(), reference), Targets.objects(node.object(), reference));
        }
    }

    private void addAll(Node.Place place, List<EObject> children) {
        var nameless = children.stream().filter(child -> !isNamed(child)).toList();
        var found = namelessKeys(place, nameless);
        var list = new ArrayList<String>();
        for (var child : children) {
            list.add(isNamed(child) ? named(child, place, list.size()) : found.get(child));
            add(new Node(list.get(list.size() - 1), child, place));
        }
        lists.put(place, list);
    }

    private static boolean isNamed(EObject object) {
        return Targets.inFile(object).isPresent();
    }

    /** An id that is used twice, or in another version for something of another type, counts for its first holder. */
    private String named(EObject object, Node.Place place, int index) {
        var key = "#" + Targets.inFile(object).orElseThrow();
        boolean isOther = others.stream().map(other -> other.object(key)).flatMap(Optional::stream)
                .anyMatch(other -> other.eClass() != object.eClass());
        return isOther || nodes.containsKey(key) ? fresh(place, index) : key;
    }

    private String fresh(Node.Place place, int index) {
        return place.key() + "[" + side + index + "]";
    }

    private Map<EObject, String> namelessKeys(Node.Place place, List<EObject> children) {
        var found = new IdentityHashMap<EObject, String>();
        for (var other : others) {
            var open = children.stream().filter(child -> !found.containsKey(child)).toList();
            takeOver(other, place, open, found);
        }
        for (int i = 0; i < children.size(); i++) {
            found.putIfAbsent(children.get(i), fresh(place, i));
        }
        return found;
    }

    private void takeOver(Keys other, Node.Place place, List<EObject> open, Map<EObject, String> found) {
        var taken = new HashSet<>(found.values());
        var theirs = other.list(place).stream().filter(key -> key.endsWith("]") && !taken.contains(key)).toList();
        var partner = Alignment.of(theirs.stream().map(key -> other.object(key).orElseThrow()).toList(), open);
        for (int i = 0; i < partner.length; i++) {
            if (partner[i] >= 0 && mayPair(other, theirs.get(partner[i]), open.get(i))) {
                found.put(open.get(i), theirs.get(partner[i]));
            }
        }
    }

    /**
     * In the base any partner will do, and in a single place there is one; two additions are one only if they are equal.
     */
    private boolean mayPair(Keys other, String key, EObject own) {
        return other == others.get(0) || other.node(key).orElseThrow().place().reference().getUpperBound() == 1
                || Same.deep(other.object(key).orElseThrow(), own);
    }

    Iterable<String> all() {
        return nodes.keySet();
    }

    Optional<Node> node(String key) {
        return Optional.ofNullable(nodes.get(key));
    }

    Optional<EObject> object(String key) {
        return node(key).map(Node::object);
    }

    boolean has(String key) {
        return nodes.containsKey(key);
    }

    Optional<String> keyOf(EObject object) {
        return Optional.ofNullable(keys.get(object));
    }

    /** Keys of what a place holds, in order. */
    List<String> list(Node.Place place) {
        return lists.getOrDefault(place, List.of());
    }

    /** The place of an element, or null for the file's own. */
    Node.Place place(String key) {
        return node(key).map(Node::place).orElse(null);
    }

    /** Tells whether an element stands in another one or is it. */
    boolean isWithin(String key, String owner) {
        for (var at = key; at != null; at = place(at) == null ? null : place(at).owner()) {
            if (at.equals(owner)) {
                return true;
            }
        }
        return false;
    }

    /** Places of a version that hold something. */
    Iterable<Node.Place> places() {
        return lists.keySet();
    }
}
