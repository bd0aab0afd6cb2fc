// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Clip;
import org.benchlore.edit.Edit;
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
        addStep("");
    }

    private void addStep(String text) {
        var step = step(text);
        var way = way();
        var work = way.map(Way::getWork);
        if (work.isPresent()) {
            session.execute(inner().add(work.get(), Literals.WORK__STEPS, step, index(work.get())).edit());
        } else {
            var fresh = BookFactory.eINSTANCE.createWork();
            fresh.getSteps().add(step);
            session.execute(way.map(known -> inner().add(known, Literals.WAY__WORK, fresh, InnerEdits.END))
                    .orElseGet(() -> inner().add(procedure, Literals.PROCEDURE__WAYS, way(fresh), InnerEdits.END))
                    .edit());
        }
        show(step);
    }

    private static Step step(String text) {
        var step = BookFactory.eINSTANCE.createStep();
        if (!text.isEmpty()) {
            step.setText(text);
        }
        return step;
    }

    /** Makes a step of each line, as one edit. */
    void addSteps(List<String> lines) {
        var texts = StepLines.of(String.join("\n", lines));
        if (way().map(Way::getWork).isEmpty()) {
            addStep(texts.get(0));
            texts = texts.subList(1, texts.size());
        }
        var work = way().map(Way::getWork).orElseThrow();
        int at = index(work) == InnerEdits.END ? work.getSteps().size() : index(work);
        var edits = new ArrayList<Edit>();
        EObject last = null;
        for (int i = texts.size() - 1; i >= 0; i--) {
            var adding = inner().add(work, Literals.WORK__STEPS, step(texts.get(i)), at);
            last = last == null ? adding.element() : last;
            edits.add(adding.edit());
        }
        if (last != null) {
            session.execute(Edits.all(Messages.linesLabel, edits));
            show(last);
        }
    }

    /** Leaves the first line in the selected step and makes a step of each other line. */
    void split() {
        selected().filter(Step.class::isInstance).map(Step.class::cast).filter(step -> step.getText() != null)
                .ifPresent(step -> {
                    var texts = StepLines.of(step.getText());
                    if (texts.size() > 1) {
                        session.execute(session.edits().text(step, Literals.STEP__TEXT, texts.get(0)));
                        addSteps(texts.subList(1, texts.size()));
                    }
                });
    }

    Optional<Clip> copy() {
        return selected().map(element -> Clip.of(session, element));
    }

    /** Pastes a step behind the selected one, a way behind the others. */
    void paste(Clip clip) {
        if (clip.content() instanceof Way) {
            begin(inner().paste(clip, procedure, Literals.PROCEDURE__WAYS, InnerEdits.END));
        } else if (way().map(Way::getWork).isPresent()) {
            var work = way().map(Way::getWork).get();
            begin(inner().paste(clip, work, Literals.WORK__STEPS, index(work)));
        } else {
            throw new IllegalArgumentException(Messages.noWay);
        }
    }

    private void begin(InnerEdits.Adding adding) {
        session.execute(adding.edit());
        show(adding.element());
    }

    /** Moves the selected step to the end of another way. */
    void moveTo(Way way) {
        moveTo(way, InnerEdits.END);
    }

    private void moveTo(Way way, int index) {
        selected().filter(Step.class::isInstance).ifPresent(step -> {
            if (way.getWork() == null) {
                session.execute(inner().add(way, Literals.WAY__WORK, BookFactory.eINSTANCE.createWork(), InnerEdits.END)
                        .edit());
            }
            session.execute(inner().moveTo(step, way.getWork(), Literals.WORK__STEPS, index));
            show(step);
        });
    }

    /** The ways that the selected step can be moved to. */
    List<Way> otherWays() {
        return selected().filter(Step.class::isInstance).isEmpty() ? List.of()
                : procedure.getWays().stream().filter(way -> way != way().orElse(null)).toList();
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
        selected().ifPresent(element -> begin(inner().duplicate(element)));
    }

    void remove() {
        selected().ifPresent(element -> {
            session.execute(inner().remove(element));
            outline.refresh();
        });
    }

    void move(int by) {
        selected().ifPresent(element -> {
            var all = (List<?>) element.eContainer().eGet(element.eContainmentFeature());
            int at = all.indexOf(element);
            if (element instanceof Step && (at + by < 0 || at + by >= all.size())) {
                moveBeyond(by);
                return;
            }
            session.execute(inner().move(element, at + by));
            outline.refresh();
            outline.select(element);
        });
    }

    /** A step at the end of its way goes on into the next one. */
    private void moveBeyond(int by) {
        var ways = procedure.getWays();
        int to = ways.indexOf(way().orElseThrow()) + by;
        if (to >= 0 && to < ways.size()) {
            moveTo(ways.get(to), by > 0 && ways.get(to).getWork() != null ? 0 : InnerEdits.END);
        }
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
