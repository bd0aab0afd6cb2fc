// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.BookFactory;
import org.benchlore.model.Component;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.model.PartUse;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/**
 * Starts a job record from a plan: unit, day, title, and what the plan leaves in place although it serves what is renewed.
 * Nothing is said to be opened, done or confirmed: a person writes that.
 */
public final class JobStart {

    private static final int FORMAT = 1;

    private final Library library;
    private final Plan plan;
    private final Set<String> renewed = new LinkedHashSet<>();
    private final Set<EObject> chains = new LinkedHashSet<>();

    private JobStart(Library library, Plan plan) {
        this.library = library;
        this.plan = plan;
    }

    /**
     * Makes the record.
     *
     * @param library the library the plan was made from
     * @param plan a plan for a unit
     * @param id id of the new record
     * @return a record that lies in no file yet
     * @throws IllegalArgumentException if the plan is for no unit, or the id is none
     */
    public static JobRecord of(Library library, Plan plan, String id) {
        var unit = plan.unit().orElseThrow(() -> new IllegalArgumentException(
                "A job is done on one unit: plan for a unit, not for a machine."));
        var job = BookFactory.eINSTANCE.createJobRecord();
        job.setId(org.benchlore.model.ElementId.check(id));
        job.setFormatVersion(FORMAT);
        job.setInvented(unit.isInvented());
        job.setTitle(Titles.of(unit) + ": " + String.join(", ", plan.procedures().stream().map(Titles::of).toList()));
        job.setState(JobState.OPEN);
        job.setOpened(plan.request().today());
        job.setUnit(unit);
        new JobStart(library, plan).left(job);
        return job;
    }

    /** Components with parts of their own in a function that a renewed component serves as well. */
    private void left(JobRecord job) {
        plan.items(Part.WORK).forEach(item -> item.work().ifPresent(work -> work.getParts().stream()
                .map(PartUse::getComponent).map(library::resolve).flatMap(Optional::stream)
                .filter(Component.class::isInstance).map(Component.class::cast).forEach(this::renew)));
        plan.machine().eAllContents().forEachRemaining(element -> {
            if (element instanceof Component component && !component.getParts().isEmpty()
                    && !renewed.contains(component.getId()) && component.getFunctions().stream().anyMatch(chains::contains)) {
                var left = BookFactory.eINSTANCE.createLeftInPlace();
                left.setComponent(component);
                left.setText("Left by the plan; to be confirmed");
                job.getLeft().add(left);
            }
        });
    }

    private void renew(Component component) {
        renewed.add(component.getId());
        chains.addAll(component.getFunctions());
        component.eAllContents().forEachRemaining(inner -> {
            if (inner instanceof Component part) {
                renewed.add(part.getId());
            }
        });
    }
}
