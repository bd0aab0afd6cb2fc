// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Clip;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.Sessions;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.Way;
import org.benchlore.model.Work;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.Failures;
import org.eclipse.emf.ecore.EObject;

/** What is done to the steps and ways of a procedure, at the place that is selected in the outline. */
final class StepEdits {

    private final EditSession session;
    private final Procedure procedure;
    private final Outline outline;

    StepEdits(EditSession session, Procedure procedure, Outline outline) {
        this.session = session;
        this.procedure = procedure;
        this.outline = outline;
    }

    private InnerEdits inner() {
        return session.edits().inner();
    }

    private Optional<EObject> selected() {
        return outline.selected().filter(element -> element != procedure);
    }

    /** The way that the selected step is in, else the last. */
    private Optional<Way> way() {
        for (var at = selected().orElse(null); at != null; at = at.eContainer()) {
            if (at instanceof Way way) {
                return Optional.of(way);
            }
        }
        var ways = procedure.getWays();
        return ways.isEmpty() ? Optional.empty() : Optional.of(ways.get(ways.size() - 1));
    }

    /** Behind the selected step, or behind all. */
    private int index(Work work) {
        int at = selected().filter(Step.class::isInstance).map(work.getSteps()::indexOf).orElse(-1);
        return at < 0 ? InnerEdits.END : at + 1;
    }

    void addStep() {
        var step = BookFactory.eINSTANCE.createStep();
        var way = way();
        var work = way.map(Way::getWork);
        if (work.isPresent()) {
            session.execute(inner().add(work.get(), Literals.WORK__STEPS, step, index(work.get())).edit());
        } else {
            var fresh = BookFactory.eINSTANCE.createWork();
            fresh.getSteps().add(step);
            session.execute(way.map(known -> inner().add(known, Literals.WAY__WORK, fresh, InnerEdits.END))
                    .orElseGet(() -> inner().add(procedure, Literals.PROCEDURE__WAYS, way(fresh), InnerEdits.END)).edit());
        }
        show(step);
    }

    private static Way way(Work work) {
        var way = BookFactory.eINSTANCE.createWay();
        way.setWork(work);
        return way;
    }

    void addWay() {
        var way = way(BookFactory.eINSTANCE.createWork());
        session.execute(inner().add(procedure, Literals.PROCEDURE__WAYS, way, InnerEdits.END).edit());
        show(way);
    }

    void duplicate() {
        selected().ifPresent(element -> {
            var copy = inner().duplicate(element);
            session.execute(copy.edit());
            show(copy.element());
        });
    }

    void remove() {
        selected().ifPresent(element -> {
            session.execute(inner().remove(element));
            outline.refresh();
        });
    }

    void move(int by) {
        selected().ifPresent(element -> {
            int at = ((List<?>) element.eContainer().eGet(element.eContainmentFeature())).indexOf(element);
            session.execute(inner().move(element, at + by));
            outline.refresh();
            outline.select(element);
        });
    }

    private void show(EObject element) {
        outline.refresh();
        outline.select(element);
    }

    /** Inserts copies of steps of another procedure, as one edit. */
    void insert(Sessions sessions, String path, List<String> ids) {
        if (way().map(Way::getWork).isEmpty()) {
            addStep();
        }
        var work = way().map(Way::getWork).orElseThrow();
        var known = sessions.find(path);
        try {
            var other = known.isPresent() ? known.get() : sessions.open(path);
            var pasted = paste(other, work, ids);
            if (known.isEmpty()) {
                other.close();
            }
            session.execute(Edits.all(Messages.insertLabel, pasted.stream().map(InnerEdits.Adding::edit).toList()));
            show(pasted.get(pasted.size() - 1).element());
        } catch (LibraryException e) {
            Failures.show(Messages.insertFailed, e.getMessage(), e);
        }
    }

    /** Each is put at the same place, the last first, so that every single edit is possible by itself. */
    private List<InnerEdits.Adding> paste(EditSession other, Work work, List<String> ids) {
        int at = index(work);
        var pasted = new ArrayList<InnerEdits.Adding>();
        for (int i = ids.size() - 1; i >= 0; i--) {
            var step = other.element().eResource().getEObject(ids.get(i));
            if (step != null) {
                pasted.add(inner().paste(Clip.of(other, step), work, Literals.WORK__STEPS,
                        at == InnerEdits.END ? work.getSteps().size() : at));
            }
        }
        return pasted;
    }
}
