// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.model.Verification;
import org.benchlore.model.Way;

/** The page of a procedure: what it is for, each way whole and in order, then how it is closed and proved. */
final class ProcedurePage implements KindPage {

    private final Procedure procedure;
    private final Scope scope;
    private final Links links;

    ProcedurePage(Procedure procedure, Scope scope) {
        this.procedure = procedure;
        this.scope = scope;
        this.links = scope.links();
    }

    @Override
    public void write(Sheet sheet) {
        sheet.markDangerous();
        facts(sheet);
        sheet.section("What it is for", links.text(procedure.getSummary(), procedure));
        new Ranges(links).write(sheet, procedure.getApplicability());
        sheet.bullets(2, Texts.SYMPTOMS, procedure.getSymptoms().stream().map(Spans::of).toList());
        sheet.bullets(2, Texts.CODES, links.each(procedure.getCodes()));
        sheet.bullets(2, "Done with it", links.each(procedure.getIncludes()));
        sheet.bullets(2, "Before it", links.each(procedure.getBefore()));
        sheet.bullets(2, "After closing", links.each(procedure.getAfterClosing()));
        procedure.getWays().forEach(way -> way(sheet, way));
        new Fastenings(links).table(sheet, procedure.getWays().stream().map(Way::getWork).filter(Objects::nonNull)
                .toList());
        end(sheet);
    }

    private void facts(Sheet sheet) {
        var facts = KindPage.facts(Kind.PROCEDURE, scope).add("What is done", Labels.of(procedure.getKind()))
                .add(Texts.COMPONENT, links.to(procedure.getComponent()))
                .add("Revision", procedure.getRevision()).add(Texts.STATUS, Labels.of(procedure.getStatus()))
                .add("Author", links.to(procedure.getAuthor()))
                .add("Reviewed by", Spans.join(", ", List.of(links.to(procedure.getReviewer()),
                        Spans.of(procedure.getReviewedIn()), Spans.of(procedure.getReviewedOn()))))
                .add(Texts.SKILL, Labels.of(procedure.getSkill()))
                .add("Whole job", Works.time(procedure.getWholeJobUsual(), procedure.getWholeJobBad()));
        sheet.facts(facts);
    }

    private void way(Sheet sheet, Way way) {
        sheet.heading(2, procedure.getWays().size() == 1 ? Names.of(way)
                : "Way " + (procedure.getWays().indexOf(way) + 1) + ": " + Names.of(way));
        var works = new Works(scope, 3);
        var facts = new Facts().add("Must be open", links.needs(way.getNeeds()));
        if (way.getWork() == null) {
            sheet.facts(facts);
            sheet.labelled("Steps", Spans.of(Texts.NOT_RECORDED));
        } else {
            works.facts(facts, way.getWork());
            sheet.facts(facts);
            works.write(sheet, way.getWork());
        }
    }

    private void end(Sheet sheet) {
        new Conditions(links).write(sheet, 2, "Closing conditions", procedure.getClosingRecorded(),
                procedure.getClosingConditions());
        var verification = "Verification";
        sheet.bullets(2, verification, procedure.getVerifications().stream().map(this::verification).toList());
        if (procedure.getVerifications().isEmpty()) {
            sheet.labelled(verification, Spans.of(Texts.NOT_RECORDED));
        }
        sheet.bullets(2, "Sources", procedure.getSources().stream().map(links::cited).toList());
        sheet.picturesSection(procedure.getMedia());
        var referrers = new Referrers(scope);
        referrers.writeNotes(sheet);
        referrers.write(sheet, Set.of(Kind.NOTE));
    }

    private List<Span> verification(Verification it) {
        var how = Spans.join(", ", List.of(Spans.of(Labels.capital(Labels.of(it.getKind()))),
                Spans.of(it.getDistance()), Spans.of(it.getDuration()), Spans.of("load ", it.getLoad()),
                Spans.of(PlanWords.starts(it)),
                Spans.of("standing ", it.getSoak() == null ? "" : it.getSoak() + " between them")));
        return Spans.concat(how, Spans.before(": ", links.text(it.getText(), it)));
    }
}
