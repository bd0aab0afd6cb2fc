// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.Sessions;
import org.benchlore.edit.access.AccessRules;
import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.Need;
import org.benchlore.model.TopElement;
import org.benchlore.model.compare.Targets;
import org.benchlore.model.compare.Words;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** What the fields of one editor share: the session they change, the elements they can refer to, and their words. */
public final class FormScope {

    private final Optional<EditSession> session;
    private final TopElement element;
    private final Choices choices;
    private final Unread unread;
    private final Consumer<Address> opener;
    private final ElementMaker maker;
    private final ClipKeys clips;
    private final FieldWords words = new FieldWords();
    private final Words values;
    private Runnable relayout = () -> { };

    /**
     * Makes the scope of an editor.
     *
     * @param sessions the edit sessions of the open library; what is being edited counts as it stands in its editor
     * @param element what is shown
     * @param session the session that the element is the working copy of; empty for reading only
     * @param unread keeps what cannot be understood
     * @param opener opens what a reference leads to
     * @param maker makes what a reference is to lead to and is not there yet
     * @param clips copies and pastes elements
     */
    public FormScope(Sessions sessions, TopElement element, Optional<EditSession> session, Unread unread,
            Consumer<Address> opener, ElementMaker maker, ClipKeys clips) {
        this.element = element;
        this.session = session;
        this.unread = unread;
        this.opener = opener;
        this.maker = maker;
        this.clips = clips;
        this.choices = new Choices(sessions, element);
        this.values = new Words(address -> Optional.of(choices.title(address)));
    }

    /** Forgets what other files were called. */
    public void forgetOthers() {
        choices.forget();
    }

    /**
     * Sets what is done when a field needs more or less room.
     *
     * @param action lays the form out
     */
    public void onRelayout(Runnable action) {
        relayout = action;
    }

    void relayout() {
        relayout.run();
    }

    TopElement element() {
        return element;
    }

    boolean isEditable() {
        return session.isPresent();
    }

    Edits edits() {
        return session.orElseThrow().edits();
    }

    EditSession session() {
        return session.orElseThrow();
    }

    void execute(Edit edit) {
        session.orElseThrow().execute(edit);
    }

    Unread unread() {
        return unread;
    }

    FieldWords words() {
        return words;
    }

    Choices choices() {
        return choices;
    }

    Finder finder(EClass type) {
        var found = new ElementFinder(choices, type, maker);
        return type == Literals.ACCESS && element instanceof Machine machine && isEditable()
                ? new AccessFinder(found, session(), machine) : found;
    }

    ClipKeys clips() {
        return clips;
    }

    void open(Address address) {
        opener.accept(address);
    }

    /** What an inner element holds, in one line. */
    String summary(EObject object) {
        return object instanceof Need need ? need.getAnyOf().isEmpty() ? Messages.nothingChosen
                : targets(need, Literals.NEED__ANY_OF).stream().map(choices::title)
                        .collect(Collectors.joining(Messages.or)) : values.summary(object);
    }

    /** Why an element cannot be named in a field, if so. */
    Optional<String> refusal(EObject owner, EReference reference, Address named) {
        return choices.own(named).filter(Access.class::isInstance)
                .flatMap(access -> AccessRules.problem(owner, reference, (Access) access));
    }

    String label(EObject object) {
        return values.label(object);
    }

    /** Where a reference leads, in order. */
    List<Address> targets(EObject owner, EReference reference) {
        return Targets.of(owner, reference).stream().map(this::address).toList();
    }

    private Address address(String target) {
        return target.startsWith("#") ? new Address(Kind.of(element.eClass()).orElseThrow().path(element.getId()),
                target.length() == 1 ? "x" : target.substring(1)) : Address.parse(target);
    }
}
