// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.model.ComebackReason;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;

/** The page of a job record: the complaint, what was saved, every round in order, and how it ended. */
final class JobPage implements KindPage {

    private final JobRecord job;
    private final Scope scope;
    private final Links links;

    JobPage(JobRecord job, Scope scope) {
        this.job = job;
        this.scope = scope;
        this.links = scope.links();
    }

    @Override
    public void write(Sheet sheet) {
        facts(sheet);
        sheet.section("Complaint", links.text(job.getComplaint(), job));
        sheet.bullets(2, "Codes on arrival", links.codes(job.getCodesOnArrival(), job.getCodesAsWritten()));
        var saved = new Rows("Saved before the strip", "What", Texts.VALUE, Texts.REMARK);
        job.getSaved().forEach(it -> saved.row(Spans.of(it.getWhat()), Spans.of(it.getValue()),
                Spans.of(it.getText())));
        sheet.table(saved);
        var rounds = new Rounds(scope);
        job.getRounds().forEach(round -> rounds.write(sheet, job.getRounds().indexOf(round) + 1, round));
        left(sheet);
        offers(sheet);
        sheet.section(Texts.FINDING, links.text(job.getFinding(), job));
        sheet.section(Texts.VERIFICATION, links.text(job.getVerification(), job));
        sheet.picturesSection(job.getMedia());
        new Referrers(scope).write(sheet);
    }

    private void facts(Sheet sheet) {
        var reason = job.getComebackReason() == ComebackReason.NOT_RECORDED && job.getComebackOf() == null ? ""
                : Labels.of(job.getComebackReason());
        sheet.facts(KindPage.facts(Kind.JOB, scope).add(Texts.UNIT, links.to(job.getUnit()))
                .add("Where it stands", Labels.of(job.getState())).add("Begun", job.getOpened())
                .add("Handed back", job.getClosed()).add(Texts.METER, job.getMeter())
                .add(Texts.CAUSE, links.to(job.getCause())).add("Found to have failed", links.joined(job.getFailed()))
                .add("Comeback of", links.to(job.getComebackOf())).add("Why it came back", reason));
    }

    private void left(Sheet sheet) {
        var rows = new Rows("Old parts left in place", Texts.COMPONENT, Texts.PART, "Why", "Confirmed by");
        job.getLeft().forEach(it -> rows.row(links.to(it.getComponent()), links.to(it.getPart()),
                Spans.of(it.getText()), it.getConfirmedBy() == null ? Spans.of("not confirmed yet")
                        : links.to(it.getConfirmedBy())));
        sheet.table(rows);
    }

    private void offers(Sheet sheet) {
        var rows = new Rows("Offered to the customer", "Work", Texts.PRICE, "Answer", Texts.BY, "How", Texts.DATE);
        job.getOffers().forEach(it -> rows.row(
                Spans.join(" – ", List.of(links.to(it.getProcedure()), Spans.of(it.getText()))),
                Spans.of(scope.prices().amount(it.getPrice())), Spans.of(Labels.of(it.getAnswer())),
                Spans.of(it.getBy()), Spans.of(it.getHow()), Spans.of(it.getOn())));
        sheet.table(rows);
    }
}
