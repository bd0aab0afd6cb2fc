// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.benchlore.evidence.decide.DecisionWords;
import org.benchlore.evidence.decide.Option;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.page.Block.Drawn;
import org.benchlore.page.Block.Tone;
import org.benchlore.page.drawing.CostDrawing;
import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Assumptions;
import org.benchlore.plan.adding.Figure;
import org.benchlore.plan.adding.Proposal;

/** Writes what may be worth adding while it is open, for the shop: ways out, both sums, counts, every figure with its source. */
public final class AddingPage {

    /** What is said where there is nothing to show. */
    public static final String NOTHING = "Nothing that has a reason: no note, no job on record and nothing that is ruined speaks for"
            + " more.";

    private final Adding adding;
    private final Sheet sheet = new Sheet();

    private AddingPage(Adding adding) {
        this.adding = adding;
    }

    /**
     * Makes the page.
     *
     * @param adding what may be worth adding
     * @return its page
     */
    public static Page of(Adding adding) {
        return new AddingPage(adding).page();
    }

    /**
     * Makes the page of one of them, where its figures stand beside it.
     *
     * @param adding what may be worth adding
     * @param one one of its proposals
     * @return its page
     */
    public static Page of(Adding adding, Proposal one) {
        return new AddingPage(adding).page(one);
    }

    private Page page(Proposal one) {
        sheet.heading(1, one.title());
        if (adding.machine().isInvented()) {
            sheet.banner(Tone.INVENTED, Texts.INVENTED);
        }
        sheet.banner(Tone.CAUTION, Texts.CHECK_FIRST);
        reasons(one);
        ways(one);
        sheet.add(new Drawn(CostDrawing.of(one, adding.surePercent(), adding.currency())));
        shared(pair -> pair.first().equals(one.id()) || pair.second().equals(one.id()));
        return new Page(one.title(), sheet.blocks());
    }

    private Page page() {
        var title = "Worth adding while it is open: " + adding.unit().map(Names::of).orElse(Names.of(adding.machine()));
        sheet.heading(1, title);
        if (adding.machine().isInvented()) {
            sheet.banner(Tone.INVENTED, Texts.INVENTED);
        }
        summary();
        adding.remarks().forEach(remark -> sheet.paragraph(Spans.of(remark)));
        if (adding.proposals().isEmpty()) {
            sheet.paragraph(Spans.of(NOTHING));
        }
        overview();
        adding.proposals().forEach(this::proposal);
        shared(pair -> true);
        sheet.banner(Tone.CAUTION, Texts.CHECK_FIRST);
        return new Page(title, sheet.blocks());
    }

    private void summary() {
        var facts = new Facts().add(Texts.MACHINE, Names.of(adding.machine()));
        adding.plan().ifPresent(plan -> facts.add("To be done", Spans.words(plan.procedures().stream().map(Names::of).toList()))
                .add("Price with tax", plan.price().total() + " " + plan.price().currency() + ", " + PlanPage.hours(plan.times()
                        .minutes().usual()) + " by the clock"));
        sheet.facts(facts.add("Kept until", adding.keptUntil().map(Object::toString)
                .orElse("not written down; --keep YEARS says it")).add("Amounts in", adding.currency()));
    }

    private void overview() {
        var rows = new Rows("What could be added", "Work", "Extra if done now", "If it must come apart again", "Seen",
                "Pays from");
        adding.proposals().forEach(one -> rows.row(Spans.of(one.title()), Spans.of(amount(one.assumptions().customer().extra())
                + ", " + PlanPage.hours(Math.max(0, one.extra()))), Spans.of(amount(one.assumptions().customer().apartLater())
                        + ", " + PlanPage.hours(one.apart())), Spans.of(one.known().words()), Spans.of(AddingWords.paysFrom(one))));
        sheet.table(rows);
    }

    private void proposal(Proposal one) {
        sheet.heading(2, one.title());
        reasons(one);
        ways(one);
        figures(one);
        sheet.add(new Drawn(CostDrawing.of(one, adding.surePercent(), adding.currency())));
    }

    private void reasons(Proposal one) {
        var lines = new ArrayList<List<Span>>();
        DecisionWords.lines(one.decision(), one.known().words()).forEach(line -> lines.add(Spans.of(line)));
        if (!one.notes().isEmpty()) {
            lines.add(Spans.concat(Spans.of("Written down in "), Spans.join(", ", one.notes().stream().map(AddingPage::note).toList())));
        }
        one.assumptions().find(Figure.RUINS).map(Assumptions.Assumed::from).filter(from -> from.contains(Proposal.TOO_LOW))
                .ifPresent(from -> lines.add(Spans.of("What its failure ruins: " + from + "; so a later job costs more than is said here")));
        one.known().passedOver().forEach(line -> lines.add(Spans.of("Not counted: " + line)));
        one.known().oldPart().ifPresent(part -> lines.add(Spans.of("In it now, by the job records or because no other fits: " + part.id())));
        if (one.basis() == Proposal.Basis.NOTE) {
            lines.add(Spans.of("Time and price are what the note gives: no plan was made for it" + (one.apart() == 0
                    ? "; it gives no time for doing it alone, so the later price is too low" : "")));
        }
        sheet.bullets(lines);
    }

    private static List<Span> note(String id) {
        return List.of(new Span.Link(id, new Address(Kind.NOTE.path(id), id)));
    }

    private void ways(Proposal one) {
        var decision = one.decision();
        var rows = new Rows("Four ways out, what each comes to for a job", "Way", "The customer", "The shop, if it stands for it");
        for (var option : Option.values()) {
            rows.row(Spans.of(AddingWords.way(option)), Spans.of(sum(decision.customer().costs().get(option), one, option)),
                    Spans.of(decision.shop().map(own -> own.costs().get(option)).map(AddingPage::amount).orElse("")));
        }
        sheet.table(rows);
    }

    private static String sum(BigDecimal cost, Proposal one, Option option) {
        return cost == null ? AddingWords.noSum(one, option) : amount(cost);
    }

    /** What is known with its source, and what must be said before a way out has a sum. */
    private void figures(Proposal one) {
        var rows = new Rows("What it stands on; each can be changed", "Figure", "Value", "From");
        one.assumptions().figures().forEach((figure, assumed) -> rows.row(name(figure), Spans.of(figure.form() == Figure.Form.MONEY
                ? amount(assumed.value()) : assumed.value().toPlainString()), Spans.of(assumed.from())));
        Stream.of(Figure.TEST_FINDS, Figure.EYE_FINDS).filter(figure -> one.assumptions().find(figure).isEmpty())
                .filter(figure -> figure != Figure.TEST_FINDS || one.test().isPresent())
                .forEach(figure -> rows.row(name(figure), Spans.of("not known"), Spans.of("nobody has written it down")));
        sheet.table(rows);
    }

    private static List<Span> name(Figure figure) {
        return Spans.of(Labels.capital(figure.words()) + " (" + figure.word() + ")");
    }

    private void shared(Predicate<Adding.Pair> which) {
        var lines = new ArrayList<List<Span>>();
        adding.pairs().stream().filter(which).forEach(pair -> lines.add(Spans.of(title(pair.first()) + ", and " + title(pair.second())
                + " share an opening (" + String.join(", ", pair.openings()) + "): extra for both " + amount(pair.extraBoth())
                + ", each by itself together " + amount(pair.extraEach()))));
        adding.together().filter(it -> it.chosen().size() > 1).ifPresent(it -> lines.add(Spans.of("On the customer's money"
                + " alone worth doing together: " + String.join("; ", it.chosen().stream().map(this::title).toList())
                + "; it saves " + amount(it.gain()) + " for a job")));
        sheet.bullets(2, "Sharing an opening", lines);
    }

    private String title(String id) {
        return adding.proposal(id).map(Proposal::title).orElse(id);
    }

    static String amount(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
