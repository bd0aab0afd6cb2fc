// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;

import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Recorded;
import org.benchlore.model.compare.Targets;
import org.benchlore.model.compare.Words;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.SetCommand;

/**
 * Makes the edits of one session. Each looks at the working copy as it is when it is made, so it is made shortly before
 * it is done. Owners are elements of the session's working copy.
 */
public final class Edits {

    private static final Set<EAttribute> FIXED = Set.of(Literals.ELEMENT__ID, Literals.TOP_ELEMENT__FORMAT_VERSION);

    private final EditSession session;
    private final RandomGenerator random;
    private final Words words = new Words();

    Edits(EditSession session, RandomGenerator random) {
        this.session = session;
        this.random = random;
    }

    /**
     * Sets a field from what was typed.
     *
     * @param owner an element
     * @param field a field with one value
     * @param typed the text; empty clears the field
     * @return the edit
     * @throws IllegalArgumentException with a plain sentence if the text is no value of the field
     */
    public Edit text(EObject owner, EAttribute field, String typed) {
        if (FIXED.contains(field)) {
            throw new IllegalArgumentException("The " + words.field(field) + " of an element stays as it is");
        }
        var recorded = RecordedLists.listOf(field);
        var value = FieldText.read(field, typed);
        if (recorded.isPresent()) {
            return recorded(owner, recorded.get(), (Recorded) value.orElse(Recorded.NOT_RECORDED));
        }
        return value(owner, field, value.orElse(null));
    }

    /**
     * Sets a field from what was typed so far. Done one after the other, such edits are undone as one.
     *
     * @param owner an element
     * @param field a field with one value
     * @param typed the whole text of the field
     * @return the edit
     * @throws IllegalArgumentException with a plain sentence if the text is no value of the field
     */
    public Edit typing(EObject owner, EAttribute field, String typed) {
        return text(owner, field, typed).typed(EcoreUtil.getRelativeURIFragmentPath(session.element(), owner) + "."
                + field.getName());
    }

    /**
     * Sets a field to a value.
     *
     * @param owner an element
     * @param field a field with one value
     * @param value a value of the model, or null to clear it
     * @return the edit
     */
    public Edit value(EObject owner, EAttribute field, Object value) {
        var now = owner.eIsSet(field) ? owner.eGet(field) : null;
        var label = (value == null ? "clear " : "change ") + words.field(field);
        return Objects.equals(now, value) ? Edit.nothing(label) : Edit.of(label, set(owner, field, value));
    }

    private Command set(EObject owner, EStructuralFeature field, Object value) {
        return new SetCommand(session.domain(), owner, field, value == null ? SetCommand.UNSET_VALUE : value);
    }

    /**
     * Sets a field that holds several values from lines of text.
     *
     * @param owner an element
     * @param field a field with several values
     * @param typed one value a line; empty lines are passed over
     * @return the edit
     * @throws IllegalArgumentException with a plain sentence if a line is no value of the field
     */
    public Edit lines(EObject owner, EAttribute field, List<String> typed) {
        var values = new ArrayList<Object>();
        typed.forEach(line -> FieldText.read(field, line).ifPresent(values::add));
        var label = "change " + words.field(field);
        return owner.eGet(field).equals(values) ? Edit.nothing(label)
                : Edit.of(label, new SetValues(owner, field, values));
    }

    /**
     * Sets or clears a reference.
     *
     * @param owner an element
     * @param reference a reference to one element
     * @param target where that element stands, or empty to clear it
     * @return the edit
     * @throws IllegalArgumentException if the address is one within the file and leads to nothing fitting
     */
    public Edit reference(EObject owner, EReference reference, Optional<Address> target) {
        var value = target.map(address -> target(reference, address)).orElse(null);
        return Edit.of((value == null ? "clear " : "change ") + words.field(reference), set(owner, reference, value));
    }

    /**
     * Sets a reference to several elements.
     *
     * @param owner an element
     * @param reference a reference to several elements
     * @param targets where they stand, in order, each once
     * @return the edit
     * @throws IllegalArgumentException if an address is one within the file and leads to nothing fitting
     */
    public Edit references(EObject owner, EReference reference, List<Address> targets) {
        var values = targets.stream().distinct().map(address -> target(reference, address)).toList();
        return Edit.of("change " + words.field(reference), new SetValues(owner, reference, values));
    }

    /**
     * Adds one more element to a reference to several.
     *
     * @param owner an element
     * @param reference a reference to several elements
     * @param target where the further one stands
     * @return the edit, which does nothing if it is there already
     * @throws IllegalArgumentException if the address is one within the file and leads to nothing fitting
     */
    public Edit addReference(EObject owner, EReference reference, Address target) {
        var label = "add to " + words.field(reference);
        var value = target(reference, target);
        if (Targets.of(owner, reference).contains(Targets.text(owner, value))) {
            return Edit.nothing(label);
        }
        var values = new ArrayList<Object>((List<?>) owner.eGet(reference, false));
        values.add(value);
        return Edit.of(label, new SetValues(owner, reference, values));
    }

    private EObject target(EReference reference, Address address) {
        EClass type = reference.getEReferenceType();
        if (!address.path().equals(session.path())) {
            return References.to(type, address);
        }
        var inner = session.element().eResource().getEObject(address.id());
        if (inner == null || !type.isInstance(inner)) {
            throw new IllegalArgumentException("There is no " + words.field(reference) + " '" + address.id()
                    + "' here");
        }
        return inner;
    }

    /**
     * Says whether a list that matters for safety was written down.
     *
     * @param owner an element
     * @param list its list
     * @param recorded NONE: somebody looked and there is none; LISTED: it is complete as it stands
     * @return the edit
     * @throws IllegalArgumentException with a plain sentence if the list itself says otherwise
     */
    public Edit recorded(EObject owner, EReference list, Recorded recorded) {
        var field = RecordedLists.fieldOf(list).orElseThrow(() ->
                new IllegalArgumentException("There is nothing to say about " + words.field(list)));
        int count = ((List<?>) owner.eGet(list)).size();
        if (recorded == Recorded.NONE && count > 0) {
            throw new IllegalArgumentException("There are " + count + " in " + words.field(list)
                    + ": remove them before saying that there are none");
        }
        if (recorded == Recorded.LISTED && count == 0) {
            throw new IllegalArgumentException("Nothing stands in " + words.field(list)
                    + ": add what there is, or say that there is none");
        }
        return value(owner, field, recorded == Recorded.NOT_RECORDED ? null : recorded);
    }

    /**
     * Returns the edits that add, remove and move inner elements.
     *
     * @return the maker of such edits for the same session
     */
    public InnerEdits inner() {
        return new InnerEdits(session, random);
    }

    /**
     * Puts several edits of this session together: done and undone as one.
     *
     * @param label what they do, as it follows 'Undo'
     * @param edits the edits, each of which must be possible before the others are done
     * @return one edit
     */
    public static Edit all(String label, List<Edit> edits) {
        var command = new CompoundCommand();
        edits.stream().map(Edit::command).flatMap(Optional::stream).forEach(command::append);
        return command.isEmpty() ? Edit.nothing(label) : Edit.of(label, command);
    }
}
