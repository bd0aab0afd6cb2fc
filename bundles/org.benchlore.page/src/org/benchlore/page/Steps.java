// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.model.Outcome;
import org.benchlore.model.Step;
import org.benchlore.model.StepKind;
import org.benchlore.page.Block.Drawn;
import org.benchlore.page.Block.Numbered;

/** Writes steps in order, numbered from 1; the hazards of a step stand before it. */
final class Steps {

    private final Links links;
    private final Hazards hazards;
    private final Fastenings fastenings;
    private final Measurements measurements;

    Steps(Links links) {
        this.links = links;
        this.hazards = new Hazards(links);
        this.fastenings = new Fastenings(links);
        this.measurements = new Measurements(links);
    }

    void write(Sheet sheet, List<Step> steps) {
        steps.forEach(step -> write(sheet, step));
    }

    private void write(Sheet sheet, Step step) {
        hazards.write(sheet, step.getHazards());
        var label = step.getKind() == StepKind.DO ? "" : Labels.capital(Labels.of(step.getKind()));
        var text = links.text(step.getText(), step);
        sheet.add(new Numbered(Names.number(step), label, text.isEmpty() ? Spans.of("(no text)") : text,
                step.isSignOff()));
        sheet.labelled("Why", links.text(step.getWhy(), step));
        if (!step.getFastenings().isEmpty()) {
            sheet.markDangerous();
        }
        sheet.bullets(details(step));
        step.getFastenings().forEach(fastening -> Sequences.drawing(fastening).map(Drawn::new).ifPresent(sheet::add));
        sheet.pictures(step.getMedia());
    }

    private List<List<Span>> details(Step step) {
        var lines = new ArrayList<List<Span>>();
        step.getFastenings().forEach(fastening -> lines.add(fastenings.line(fastening)));
        step.getMeasurements().forEach(measurement -> lines.add(measurements.line(measurement)));
        step.getOutcomes().forEach(outcome -> lines.add(outcome(outcome)));
        return lines;
    }

    private List<Span> outcome(Outcome outcome) {
        var then = links.text(outcome.getThen(), outcome);
        var goTo = outcome.getGoTo() == null ? List.<Span>of() : links.step(outcome.getGoTo(), outcome);
        return Spans.concat(List.of(Span.of("If "), Span.strong("“" + answer(outcome) + "”"), Span.of(": ")),
                Spans.join(" – ", List.of(then, Spans.before("go to ", goTo),
                        Spans.before("speaks for: ", links.joined(outcome.getPoints())),
                        Spans.before("speaks against: ", links.joined(outcome.getAgainst())))));
    }

    private static String answer(Outcome outcome) {
        return outcome.getAnswer() == null || outcome.getAnswer().isBlank() ? Texts.NOT_RECORDED : outcome.getAnswer();
    }
}
