// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.benchlore.check.words.Text;
import org.benchlore.model.Hazard;
import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.TopElement;
import org.benchlore.model.Work;
import org.eclipse.emf.ecore.EObject;

/** One file's element as the rules look at it: walked once, texts read once. For one thread. */
public final class Subject {

    private final String path;
    private final TopElement top;
    private final Map<Class<?>, List<EObject>> byType = new HashMap<>();
    private final Map<Object, Text> texts = new IdentityHashMap<>();
    private final Map<Class<?>, Object> kept = new HashMap<>();

    /**
     * Walks an element.
     *
     * @param path path of its file below the library
     * @param top the element, a snapshot or a working copy
     */
    public Subject(String path, TopElement top) {
        this.path = path;
        this.top = top;
        add(top);
        top.eAllContents().forEachRemaining(this::add);
    }

    private void add(EObject object) {
        byType.computeIfAbsent(object.eClass().getInstanceClass(), type -> new ArrayList<>()).add(object);
    }

    /** The path of the file. */
    public String path() {
        return path;
    }

    /** The file's element. */
    public TopElement top() {
        return top;
    }

    /** The file's element as a procedure, if it is one. */
    public Optional<Procedure> procedure() {
        return top instanceof Procedure procedure ? Optional.of(procedure) : Optional.empty();
    }

    /**
     * Returns every element of exactly one class of the model, the file's own element among them.
     *
     * @param type a class of the model without subclasses
     * @return the elements in the order of the file
     */
    @SuppressWarnings("unchecked")
    public <T extends EObject> List<T> all(Class<T> type) {
        return (List<T>) byType.getOrDefault(type, List.of());
    }

    /** Every element of the file. */
    public Iterable<EObject> everything() {
        return () -> byType.values().stream().flatMap(List::stream).iterator();
    }

    /** Every body of work: of a procedure's ways, or of a machine's accesses. */
    public List<Work> works() {
        return all(Work.class);
    }

    /**
     * Works something out once for all rules.
     *
     * @param type names it
     * @param maker works it out
     */
    @SuppressWarnings("unchecked")
    public <T> T once(Class<?> type, Function<Subject, T> maker) {
        var known = kept.get(type);
        if (known == null) {
            known = maker.apply(this);
            kept.put(type, known);
        }
        return (T) known;
    }

    /** All that a hazard says: kind, consequence and avoidance. */
    public Text text(Hazard hazard) {
        return texts.computeIfAbsent(hazard, key -> Text.of(plain(hazard.getKind()) + ". " + plain(hazard.getConsequence()) + ". "
                + plain(hazard.getAvoidance())));
    }

    private static String plain(String text) {
        return text == null ? "" : text;
    }

    /** What a step says. */
    public Text text(Step step) {
        return texts.computeIfAbsent(step, key -> Text.of(step.getText()));
    }

    /** Reads a text of this element; kept by the identity of the string. */
    public Text text(String text) {
        return text == null ? Text.NOTHING : texts.computeIfAbsent(text, key -> Text.of(text));
    }
}
