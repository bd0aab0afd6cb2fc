// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.model.Fastening;
import org.benchlore.model.Measurement;
import org.benchlore.model.Work;
import org.benchlore.page.Block.Tone;
import org.benchlore.plan.PlanItem;
import org.benchlore.store.Library;

/**
 * Writes one line of a job card to be followed beside the boxes that it is filled into: states, conditions and hazards
 * first, then the steps, each with its own hazards before it.
 */
public final class LinePage {

    private final Links links;
    private final Sheet sheet = new Sheet();

    private LinePage(Links links) {
        this.links = links;
    }

    /**
     * Makes the page.
     *
     * @param library the library that the plan was made from
     * @param item one item of a plan
     * @return its page
     */
    public static Page of(Library library, PlanItem item) {
        return new LinePage(new Links(library, item.owner())).page(item);
    }

    private Page page(PlanItem item) {
        sheet.heading(1, PlanWords.title(item) + (item.isAgain() ? " (a second time)" : ""));
        if (!item.change().isEmpty()) {
            sheet.labelled("First bring the machine to", Spans.of(Labels.of(item.change())));
        }
        item.work().ifPresent(this::work);
        item.proof().ifPresent(proof -> sheet.paragraph(links.text(proof.getText(), proof)));
        if (sheet.isDangerous()) {
            sheet.banner(Tone.CAUTION, Texts.CHECK_FIRST);
        }
        return new Page(item.title(), sheet.blocks());
    }

    private void work(Work work) {
        new Conditions(links).write(sheet, 3, "Required conditions", work.getConditionsRecorded(), work.getConditions());
        if (work.getHazards().isEmpty() && work.getSteps().stream().allMatch(step -> step.getHazards().isEmpty())) {
            Conditions.empty(sheet, "Hazards", work.getHazardsRecorded());
        }
        new Hazards(links).write(sheet, work.getHazards());
        new Steps(links).write(sheet, List.copyOf(work.getSteps()));
    }

    /**
     * Says what a box for a measured value asks for.
     *
     * @param asked a measurement
     * @return its limits in words
     */
    public static String limits(Measurement asked) {
        return Measurements.limits(asked);
    }

    /**
     * Says what a box for a torque asks for.
     *
     * @param asked a fastening
     * @return its stages in words
     */
    public static String stages(Fastening asked) {
        return Fastenings.stages(asked);
    }
}
