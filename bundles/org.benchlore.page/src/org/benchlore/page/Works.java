// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Part;
import org.benchlore.model.PartUse;
import org.benchlore.model.Recorded;
import org.benchlore.model.SupplyUse;
import org.benchlore.model.Unattended;
import org.benchlore.model.Work;
import org.benchlore.model.YesNo;

/** Writes the body of a task: conditions, hazards of the whole work, what it takes, then its steps. */
final class Works {

    private static final String TOOLS = "Tools";
    private static final String PARTS = "Parts";
    private static final String SUPPLIES = "Supplies";

    private final Scope scope;
    private final Links links;
    private final int level;

    /** Writes headings of a level and below. */
    Works(Scope scope, int level) {
        this.scope = scope;
        this.links = scope.links();
        this.level = level;
    }

    void write(Sheet sheet, Work work) {
        new Conditions(links).write(sheet, level, "Required conditions", work.getConditionsRecorded(),
                work.getConditions());
        hazards(sheet, work);
        table(sheet, TOOLS, work.getToolsRecorded(), tools(work));
        table(sheet, PARTS, work.getPartsRecorded(), parts(work));
        table(sheet, SUPPLIES, work.getSuppliesRecorded(), supplies(work));
        sheet.heading(level, "Steps");
        if (work.getSteps().isEmpty()) {
            sheet.paragraph(Spans.of(Texts.NOT_RECORDED));
        }
        new Steps(links).write(sheet, work.getSteps());
    }

    private static boolean hasHazardsAtSteps(Work work) {
        return work.getHazardsRecorded() == Recorded.LISTED
                && work.getSteps().stream().anyMatch(step -> !step.getHazards().isEmpty());
    }

    private void hazards(Sheet sheet, Work work) {
        var title = "Hazards of the whole work";
        if (work.getHazards().isEmpty() && hasHazardsAtSteps(work)) {
            sheet.labelled(title, Spans.of("none beside those at the steps"));
        } else if (work.getHazards().isEmpty()) {
            Conditions.empty(sheet, title, work.getHazardsRecorded());
        } else {
            sheet.heading(level, title);
            new Hazards(links).write(sheet, work.getHazards());
        }
    }

    private static void table(Sheet sheet, String title, Recorded recorded, Rows rows) {
        if (rows.isEmpty()) {
            Conditions.empty(sheet, title, recorded);
        } else {
            sheet.table(rows);
        }
    }

    /** Adds the facts that decide who can do the work and when. */
    void facts(Facts facts, Work work) {
        facts.always(Texts.TIME, time(work.getMinutesUsual(), work.getMinutesBad()))
                .add("Time compared with jobs", work.getMinutesCheckedOn())
                .add("People", work.getPeople() == null ? 1 : work.getPeople())
                .add("Done by", Labels.of(work.getSkill()))
                .add(Texts.QUALIFICATIONS, Labels.of(work.getQualifications()))
                .add("Machine states", Labels.of(work.getStates()))
                .add("Nobody works while", Spans.join(", ", work.getUnattended().stream().map(Works::pause).toList()));
    }

    static String time(Quantity usual, Quantity bad) {
        if (usual == null) {
            return bad == null ? "" : bad + " when it goes badly";
        }
        return bad == null ? usual + " usually" : usual + " usually, " + bad + " when it goes badly";
    }

    private static List<Span> pause(Unattended pause) {
        return Spans.concat(Spans.of("it " + Labels.of(pause.getKind())), Spans.of(" for ", pause.getDuration()),
                Spans.of(" – ", pause.getText()));
    }

    private Rows tools(Work work) {
        var rows = new Rows(TOOLS, Texts.TOOL, Texts.REMARK);
        work.getTools().forEach(use -> rows.row(orMissing(links.to(use.getTool())), Spans.of(use.getText())));
        return rows;
    }

    private Rows parts(Work work) {
        var rows = new Rows(PARTS, Texts.PART, Texts.NUMBER, Texts.QUANTITY, "Renew", Texts.PRICE, "Used twice",
                "Superseded by", Texts.COMPONENT, Texts.REMARK);
        work.getParts().forEach(use -> part(rows, use));
        return rows;
    }

    private void part(Rows rows, PartUse use) {
        var part = links.follow(use.getPart(), Part.class);
        rows.row(orMissing(links.to(use.getPart())), Spans.of(part.map(Part::getNumber).orElse("")),
                Spans.of(use.getQuantity() == null ? 1 : use.getQuantity()), Spans.of(Labels.of(use.getNeed())),
                Spans.of(part.map(it -> scope.prices().price(it.getPrice(), it.getPriceOn())).orElse("")),
                Spans.of(part.map(Part::getSingleUse).filter(it -> it == YesNo.YES).isPresent() ? "never" : ""),
                part.map(it -> links.to(it.getSupersededBy())).orElse(List.of()), links.to(use.getComponent()),
                Spans.of(use.getText()));
    }

    private Rows supplies(Work work) {
        var rows = new Rows(SUPPLIES, "Supply", Texts.QUANTITY, Texts.PLACE, "How");
        work.getSupplies().forEach(use -> supply(rows, use));
        return rows;
    }

    private void supply(Rows rows, SupplyUse use) {
        rows.row(orMissing(links.to(use.getSupply())), Spans.of(use.getQuantity()), Spans.of(use.getPlace()),
                Spans.of(Labels.of(use.getWay())));
    }

    private static List<Span> orMissing(List<Span> link) {
        return link.isEmpty() ? Spans.of(Texts.NOT_RECORDED) : link;
    }
}
