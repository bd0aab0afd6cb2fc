// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What was typed into fields and is no value of theirs. It is not in the element, so it is kept here until it is
 * mended, undone or cleared, and nothing is saved before that.
 */
public final class Unread {

    /**
     * A field of an element.
     *
     * @param owner the element
     * @param feature its field
     */
    public record Place(EObject owner, EStructuralFeature feature) {
    }

    /**
     * What stands in the field.
     *
     * @param text as typed
     * @param reason why it is no value, a plain sentence
     */
    public record Typed(String text, String reason) {
    }

    private final Map<Place, Typed> all = new LinkedHashMap<>();
    private final Runnable changed;

    /**
     * Starts empty.
     *
     * @param changed is run after each change
     */
    public Unread(Runnable changed) {
        this.changed = changed;
    }

    /**
     * Keeps what was typed and is no value.
     *
     * @param owner the element
     * @param feature its field
     * @param text as typed
     * @param reason why it is no value, a plain sentence
     */
    public void put(EObject owner, EStructuralFeature feature, String text, String reason) {
        all.put(new Place(owner, feature), new Typed(text, reason));
        changed.run();
    }

    /**
     * Drops what was kept for a field.
     *
     * @param owner the element
     * @param feature its field
     */
    public void remove(EObject owner, EStructuralFeature feature) {
        if (all.remove(new Place(owner, feature)) != null) {
            changed.run();
        }
    }

    /**
     * Returns what was kept for a field.
     *
     * @param owner the element
     * @param feature its field
     * @return the text with its reason, or empty
     */
    public Optional<Typed> find(EObject owner, EStructuralFeature feature) {
        return Optional.ofNullable(all.get(new Place(owner, feature)));
    }

    /**
     * Returns the fields that hold such text.
     *
     * @return places and texts in the order in which they were typed
     */
    public Map<Place, Typed> all() {
        return Collections.unmodifiableMap(new LinkedHashMap<>(all));
    }

    /**
     * Tells whether there is no such text.
     *
     * @return true if everything was understood
     */
    public boolean isEmpty() {
        return all.isEmpty();
    }

    /** Drops everything. */
    public void clear() {
        all.clear();
        changed.run();
    }
}
