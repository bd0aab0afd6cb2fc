// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.model.DoneWork;
import org.benchlore.model.Fastening;
import org.benchlore.model.MeasuredValue;
import org.benchlore.model.Measurement;
import org.benchlore.model.Round;
import org.benchlore.model.Tightened;
import org.benchlore.model.ToolHolding;

/** Writes one round of a job with everything that was opened, done, removed, measured and tightened in it. */
final class Rounds {

    private final Links links;

    Rounds(Scope scope) {
        this.links = scope.links();
    }

    void write(Sheet sheet, int number, Round round) {
        sheet.heading(2, "Round " + number + ": " + Labels.of(round.getKind())
                + (round.getDate() == null ? "" : ", " + round.getDate()));
        sheet.paragraph(links.text(round.getText(), round));
        sheet.labelled("Opened", links.joined(round.getOpened()));
        done(sheet, round.getDone());
        var removed = new Rows("Removed", Texts.COMPONENT, Texts.PART, "Condition");
        round.getRemoved().forEach(it -> removed.row(links.to(it.getComponent()), links.to(it.getPart()),
                links.text(it.getCondition(), it)));
        sheet.table(removed);
        measured(sheet, round.getMeasured());
        tightened(sheet, round.getTightened());
    }

    private void done(Sheet sheet, List<DoneWork> done) {
        var rows = new Rows("Done", Texts.PROCEDURE, "Way", Texts.TIME, "People", Texts.BY, "Renewed", "Parts fitted");
        done.forEach(it -> rows.row(links.to(it.getProcedure()), links.to(it.getWay()), Spans.of(it.getMinutes()),
                Spans.of(it.getPeople()), links.to(it.getBy()), links.joined(it.getRenewed()),
                links.joined(it.getFitted())));
        sheet.table(rows);
    }

    private void measured(Sheet sheet, List<MeasuredValue> measured) {
        var rows = new Rows("Measured", "What", Texts.VALUE, "Limits", "Result", Texts.BY);
        measured.forEach(it -> rows.row(
                Spans.join(", ", List.of(links.to(it.getMeasurement()), Spans.of(it.getWhat()))),
                Spans.of(it.getValue()), Spans.of(limits(it)), Spans.of(Labels.of(it.getVerdict())),
                links.to(it.getBy())));
        sheet.table(rows);
    }

    private String limits(MeasuredValue value) {
        return links.follow(value.getMeasurement(), Measurement.class).map(Measurements::limits).orElse("");
    }

    private void tightened(Sheet sheet, List<Tightened> tightened) {
        var rows = new Rows("Tightened", Texts.PLACE, "Torque set", "Angle turned", "Asked", Texts.TOOL, Texts.BY);
        tightened.forEach(it -> rows.row(links.to(it.getFastening()), Spans.of(it.getTorque()),
                Spans.of(it.getAngle()),
                Spans.of(links.follow(it.getFastening(), Fastening.class).map(Fastenings::stages).orElse("")),
                wrench(it), links.to(it.getBy())));
        if (!rows.isEmpty()) {
            sheet.markDangerous();
        }
        sheet.table(rows);
    }

    /** The wrench, and which of several like ones. */
    private List<Span> wrench(Tightened tightened) {
        var number = links.follow(tightened.getHolding(), ToolHolding.class).map(ToolHolding::getSerial).orElse("");
        return Spans.join(", ", List.of(links.to(tightened.getTool()), Spans.of(number)));
    }
}
