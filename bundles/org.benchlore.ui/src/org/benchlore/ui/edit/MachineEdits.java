// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.edit.Clip;
import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.access.AccessEdits;
import org.benchlore.model.Access;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Component;
import org.benchlore.model.Machine;
import org.benchlore.model.Work;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** What is done to the components, causes, accesses, chains and steps of a machine, at the place that is selected. */
final class MachineEdits implements OutlineEdits {

    private final EditSession session;
    private final Outline outline;
    private final MachinePlaces places;
    private final Consumer<String> say;
    private final Runnable focusForm;

    /**
     * Makes it for one editor.
     *
     * @param session the machine's session
     * @param outline what is selected
     * @param say shows a sentence that says why something cannot be done, or what came of it
     * @param focusForm puts the cursor into the form of what is selected
     */
    MachineEdits(EditSession session, Outline outline, Consumer<String> say, Runnable focusForm) {
        this.session = session;
        this.outline = outline;
        this.places = new MachinePlaces((Machine) session.element(), outline);
        this.say = say;
        this.focusForm = focusForm;
    }

    private InnerEdits inner() {
        return session.edits().inner();
    }

    private Optional<EObject> selected() {
        return outline.selected().filter(element -> element != session.element());
    }

    /** Adds an element of a type where it belongs, seen from what is selected, and puts the cursor into its form. */
    void add(EClass type) {
        attempt(() -> begin(places.of(type), MachineBeginnings.of(type)));
    }

    /** Adds a component within the selected one. */
    void addWithin() {
        attempt(() -> begin(places.within(), MachineBeginnings.of(Literals.COMPONENT)));
    }

    private void begin(MachinePlaces.Place place, EObject element) {
        show(inner().add(place.owner(), place.list(), element, place.index()));
        focusForm.run();
    }

    @Override
    public void addNext() {
        add(places.usual());
    }

    @Override
    public Optional<Clip> copy() {
        return selected().map(element -> Clip.of(session, element));
    }

    @Override
    public void paste(Clip clip) {
        var place = places.of(clip.content().eClass());
        show(inner().paste(clip, place.owner(), place.list(), place.index()));
    }

    /** Lines of text become components, causes, accesses, chains or steps, as one edit. */
    @Override
    public void paste(List<String> lines) {
        var type = places.usual();
        var place = places.of(type);
        int at = place.index() == InnerEdits.END ? ((List<?>) place.owner().eGet(place.list())).size() : place.index();
        var edits = new ArrayList<Edit>();
        EObject last = null;
        for (int i = lines.size() - 1; i >= 0; i--) {
            var adding = inner().add(place.owner(), place.list(), MachineBeginnings.of(type, lines.get(i)), at);
            last = last == null ? adding.element() : last;
            edits.add(adding.edit());
        }
        session.execute(Edits.all(Messages.pasteLinesLabel, edits));
        shown(last);
    }

    @Override
    public void duplicate() {
        listed().ifPresent(element -> show(inner().duplicate(element)));
    }

    /** The strip or refit of an access stands in no list. */
    private Optional<EObject> listed() {
        return selected().filter(element -> element.eContainmentFeature().isMany());
    }

    @Override
    public void remove() {
        selected().ifPresent(element -> {
            int others = AccessEdits.leadingTo(session, element).size();
            session.execute(element instanceof Access access ? AccessEdits.remove(session, access)
                    : inner().remove(element));
            outline.refresh();
            if (others > 0) {
                say.accept(others == 1 ? Messages.removedLeadsOne : NLS.bind(Messages.removedLeads, others));
            }
        });
    }

    @Override
    public void move(int by) {
        listed().ifPresent(element -> {
            var all = (List<?>) element.eContainer().eGet(element.eContainmentFeature());
            session.execute(inner().move(element, all.indexOf(element) + by));
            shown(element);
        });
    }

    @Override
    public void shift(int by) {
        selected().filter(Component.class::isInstance).map(Component.class::cast).ifPresent(component -> {
            var place = by > 0 ? places.deeper(component) : places.out(component);
            place.ifPresent(to -> {
                session.execute(inner().moveTo(component, to.owner(), to.list(), to.index()));
                shown(component);
            });
        });
    }

    private void show(InnerEdits.Adding adding) {
        session.execute(adding.edit());
        shown(adding.element());
    }

    private void shown(EObject element) {
        outline.refresh();
        outline.select(element);
    }

    private void attempt(Runnable edit) {
        try {
            edit.run();
        } catch (IllegalArgumentException e) {
            say.accept(e.getMessage());
        }
    }

    /** Whether steps can be added where one is. */
    boolean takesSteps() {
        return selected().filter(element -> element instanceof Access || places.up(Work.class).isPresent()).isPresent();
    }

    /** Whether causes and components within it can be added where one is. */
    boolean hasComponent() {
        return places.up(Component.class).isPresent();
    }
}
