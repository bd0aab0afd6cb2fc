// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

import org.benchlore.model.Recorded;
import org.benchlore.model.compare.Words;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.MoveCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;

/**
 * Makes the edits that add, remove, move and paste elements within a session's element. A list that said that there was
 * none, or that it was complete, says so no longer once it was changed against that.
 */
public final class InnerEdits {

    /** Puts an element behind all others. */
    public static final int END = -1;

    private final EditSession session;
    private final RandomGenerator random;
    private final Words words = new Words();

    InnerEdits(EditSession session, RandomGenerator random) {
        this.session = session;
        this.random = random;
    }

    /**
     * An edit together with the element that it brings in.
     *
     * @param edit the edit
     * @param element the new element, part of the working copy once the edit was done
     */
    public record Adding(Edit edit, EObject element) {
    }

    /**
     * Adds an empty element.
     *
     * @param owner an element
     * @param place the list, or the place for one, that takes it
     * @param type what to add
     * @param index where in the list, or {@link #END}
     * @return the edit and the new element
     * @throws IllegalArgumentException if the place takes no such element or is taken
     */
    public Adding add(EObject owner, EReference place, EClass type, int index) {
        return add(owner, place, EcoreUtil.create(type), index);
    }

    /**
     * Adds an element that was put together before. It and all in it get new ids.
     *
     * @param owner an element
     * @param place the list, or the place for one, that takes it
     * @param element an element that is in no file
     * @param index where in the list, or {@link #END}
     * @return the edit and the new element
     * @throws IllegalArgumentException if the place takes no such element or is taken
     */
    public Adding add(EObject owner, EReference place, EObject element, int index) {
        new NewIds(session.element(), random).renew(element);
        return new Adding(put("add " + words.label(element), owner, place, element, index), element);
    }

    private Edit put(String label, EObject owner, EReference place, EObject element, int index) {
        if (!place.isContainment() || !place.getEReferenceType().isInstance(element)) {
            throw new IllegalArgumentException("A " + words.label(element) + " does not belong into "
                    + words.field(place));
        }
        if (!place.isMany()) {
            if (owner.eIsSet(place)) {
                throw new IllegalArgumentException("There is a " + words.field(place) + " already: remove it first");
            }
            return Edit.of(label, new SetCommand(session.domain(), owner, place, element));
        }
        var add = new AddCommand(session.domain(), owner, place, List.of(element), index);
        return Edit.of(label, with(add, noLonger(owner, place, Recorded.NONE)));
    }

    private static Command with(Command first, List<Command> others) {
        if (others.isEmpty()) {
            return first;
        }
        var all = new CompoundCommand();
        all.append(first);
        others.forEach(all::append);
        return all;
    }

    private List<Command> noLonger(EObject owner, EReference list, Recorded claim) {
        return RecordedLists.fieldOf(list).filter(field -> owner.eGet(field) == claim)
                .<List<Command>>map(field ->
                        List.of(new SetCommand(session.domain(), owner, field, SetCommand.UNSET_VALUE)))
                .orElse(List.of());
    }

    /**
     * Pastes a copied element with new ids.
     *
     * @param clip what was copied, in this session or another
     * @param owner an element
     * @param place the list, or the place for one, that takes it
     * @param index where in the list, or {@link #END}
     * @return the edit and the new element
     * @throws IllegalArgumentException if the place takes no such element or is taken
     */
    public Adding paste(Clip clip, EObject owner, EReference place, int index) {
        var element = clip.forFile(session);
        new NewIds(session.element(), random).renew(element);
        return new Adding(put("paste " + words.label(element), owner, place, element, index), element);
    }

    /**
     * Puts a copy of an element behind it.
     *
     * @param element an element of a list
     * @return the edit and the copy
     */
    public Adding duplicate(EObject element) {
        var list = list(element);
        var copy = paste(Clip.of(session, element), element.eContainer(), list, siblings(element).indexOf(element) + 1);
        return new Adding(new Edit("duplicate " + words.label(element), copy.edit().command(), copy.edit().typing()),
                copy.element());
    }

    /**
     * Removes an element with everything in it. What refers to it within the file is cleared along with it.
     *
     * @param element an element within the session's element
     * @return the edit
     */
    public Edit remove(EObject element) {
        var owner = element.eContainer();
        var place = element.eContainmentFeature();
        var others = new ArrayList<>(new InnerLinks(session.domain(), element).cut());
        if (!place.isMany()) {
            return Edit.of("remove " + words.label(element),
                    with(new SetCommand(session.domain(), owner, place, SetCommand.UNSET_VALUE), others));
        }
        if (siblings(element).size() == 1) {
            others.addAll(noLonger(owner, place, Recorded.LISTED));
        }
        return Edit.of("remove " + words.label(element),
                with(new RemoveCommand(session.domain(), owner, place, element), others));
    }

    /**
     * Moves an element within its list.
     *
     * @param element an element of a list
     * @param index its new place, from 0; beyond either end means that end
     * @return the edit
     */
    public Edit move(EObject element, int index) {
        int to = Math.max(0, Math.min(index, siblings(element).size() - 1));
        var label = "move " + words.label(element);
        return siblings(element).indexOf(element) == to ? Edit.nothing(label)
                : Edit.of(label, new MoveCommand(session.domain(), element.eContainer(), list(element), element, to));
    }

    /**
     * Moves an element into another list of the same file; its id and what refers to it stay.
     *
     * @param element an element of a list
     * @param owner the element that takes it, not within the moved one
     * @param place the list that takes it
     * @param index where in that list, or {@link #END}
     * @return the edit
     * @throws IllegalArgumentException if the place takes no such element
     */
    public Edit moveTo(EObject element, EObject owner, EReference place, int index) {
        if (NewIds.isWithin(owner, element)) {
            throw new IllegalArgumentException("A " + words.label(element) + " cannot be moved into itself");
        }
        var from = element.eContainer();
        var taking = new RemoveCommand(session.domain(), from, list(element), element);
        var putting = put("move", owner, place, element, index).command().orElseThrow();
        return Edit.of("move " + words.label(element), with(taking, List.of(putting)));
    }

    private EReference list(EObject element) {
        if (element.eContainer() == null || !element.eContainmentFeature().isMany()) {
            throw new IllegalArgumentException("A " + words.label(element) + " stands in no list");
        }
        return element.eContainmentFeature();
    }

    private List<?> siblings(EObject element) {
        return (List<?>) element.eContainer().eGet(element.eContainmentFeature());
    }
}
