// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.Work;
import org.benchlore.page.Block.Tone;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanItem;
import org.benchlore.store.Library;

/** Writes the card that goes with the job: every step in order, hazards before their steps, boxes for values and torque. */
public final class JobCardPage {

    private final Library library;
    private final Plan plan;
    private final Sheet sheet = new Sheet();

    private JobCardPage(Library library, Plan plan) {
        this.library = library;
        this.plan = plan;
    }

    /**
     * Makes the job card of a plan.
     *
     * @param library the library the plan was made from
     * @param plan a plan
     * @return a page to be printed
     */
    public static Page of(Library library, Plan plan) {
        return new JobCardPage(library, plan).page();
    }

    private Page page() {
        var title = "Job card: " + Names.of(PlanPage.subject(plan));
        sheet.heading(1, title);
        PlanPage.banners(sheet, plan);
        sheet.facts(new Facts().add(Texts.MACHINE, Names.of(plan.machine()))
                .add("Serial number", plan.unit().map(unit -> unit.getSerial()).orElse("____________"))
                .add("Meter reading", "____________").add("Job", "____________")
                .add("To be done", Spans.words(plan.procedures().stream().map(Names::of).toList()))
                .add("Earliest hand-back", PlanPage.moment(plan.times().handBack())));
        new PlanTables(sheet, plan).lists();
        sheet.bullets(2, "To know", plan.remarks().stream().map(remark -> Spans.of(remark)).toList());
        int number = 1;
        for (var item : plan.items()) {
            item(number++, item);
        }
        closing();
        sheet.banner(Tone.CAUTION, Texts.CHECK_FIRST);
        return new Page(title, sheet.blocks());
    }

    private void item(int number, PlanItem item) {
        sheet.heading(2, number + ". " + Labels.capital(PlanPage.part(item)) + ": " + PlanWords.title(item)
                + (item.isAgain() ? " (a second time)" : ""));
        if (!item.change().isEmpty()) {
            sheet.labelled("First bring the machine to", Spans.of(Labels.of(item.change())));
        }
        var links = new Links(library, item.owner());
        item.work().ifPresent(work -> work(links, work));
        item.proof().ifPresent(proof -> {
            sheet.paragraph(links.text(proof.getText(), proof));
            sheet.paragraph(Spans.of("Result: ____________________________   [ ] good   [ ] not good"));
        });
        sheet.paragraph(Spans.of("Time taken: ______ min   People: ____   By: ____________"));
    }

    private void work(Links links, Work work) {
        new Conditions(links).write(sheet, 3, "Required conditions", work.getConditionsRecorded(), work.getConditions());
        if (work.getHazards().isEmpty() && work.getSteps().stream().allMatch(step -> step.getHazards().isEmpty())) {
            Conditions.empty(sheet, "Hazards", work.getHazardsRecorded());
        }
        new Hazards(links).write(sheet, work.getHazards());
        var steps = new Steps(links);
        for (var step : work.getSteps()) {
            steps.write(sheet, List.of(step));
            boxes(step);
        }
    }

    private void boxes(Step step) {
        step.getMeasurements().forEach(measurement -> sheet.paragraph(Spans.of(Names.of(measurement)
                + ": ____________   [ ] within   [ ] not within   By: ______")));
        step.getFastenings().forEach(fastening -> sheet.paragraph(Spans.of(Names.of(fastening)
                + ": set to ____________   Wrench: ____________   [ ] all tightened   By: ______")));
        step.getOutcomes().forEach(outcome -> sheet.paragraph(Spans.of("[ ] "
                + (outcome.getAnswer() == null ? Texts.NOT_RECORDED : outcome.getAnswer()))));
    }

    private void closing() {
        var conditions = plan.items().stream().map(PlanItem::owner).distinct().filter(Procedure.class::isInstance)
                .map(Procedure.class::cast).flatMap(procedure -> procedure.getClosingConditions().stream()
                        .map(condition -> Spans.concat(Spans.of("[ ] "),
                                new Links(library, procedure).text(condition.getText(), condition)))).toList();
        sheet.bullets(2, "Before it is handed back", conditions);
        sheet.paragraph(Spans.of("Old part left in place, and why: ________________________________________"));
        sheet.paragraph(Spans.of("Handed back by: ____________  Date: ____________"));
    }
}
