// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import org.benchlore.evidence.CountWords;
import org.benchlore.evidence.decide.Reason;
import org.benchlore.page.Block.Tone;
import org.benchlore.plan.Plan;
import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Figure;
import org.benchlore.plan.adding.Proposal;
import org.benchlore.store.Library;

/** Writes the one page that the customer decides by: what is done, what it costs, what else could be done and why. */
public final class CustomerSheet {

    /** More would not fit on the page with the rest. */
    private static final int MOST = 4;
    /** Boxes that no line end tears apart. */
    private static final String BOXES = "[\u00a0]\u00a0yes [\u00a0]\u00a0no";
    private static final String LINE = "________________________";

    private final Library library;
    private final Adding adding;
    private final Plan plan;
    private final SheetWords words;
    private final Sheet sheet = new Sheet();

    private CustomerSheet(Library library, Adding adding, SheetWords words) {
        this.library = library;
        this.adding = adding;
        this.plan = adding.plan().orElseThrow(() -> new IllegalArgumentException(
                "There is no plan, so there is no price to put on a sheet."));
        this.words = words;
    }

    /**
     * Makes the sheet.
     *
     * @param library the library the plan was made from
     * @param adding the plan with what could be added
     * @param words what people put in
     * @return one page
     * @throws IllegalArgumentException if there is no plan
     */
    public static Page of(Library library, Adding adding, SheetWords words) {
        return new CustomerSheet(library, adding, words).page();
    }

    private Page page() {
        var title = (words.first().isPresent() ? "Revised sheet: " : "Sheet: ") + Names.of(PlanPage.subject(plan));
        sheet.heading(1, title);
        if (plan.machine().isInvented()) {
            sheet.banner(Tone.INVENTED, Texts.INVENTED);
        }
        changed();
        work();
        if (words.found().isPresent() || words.photo().isPresent()) {
            sheet.heading(2, Texts.FINDING);
            words.found().ifPresent(text -> sheet.paragraph(Spans.of(text)));
            words.photo().ifPresent(sheet::add);
        }
        options();
        sheet.labelled("What we advise, and why", Spans.of(words.advice().orElse(LINE + LINE + LINE)));
        declined();
        choice();
        sheet.paragraph(Spans.of(reference().line()));
        return new Page(title, sheet.blocks());
    }

    private void work() {
        var price = plan.price();
        var facts = new Facts().add("Serial number", plan.unit().map(unit -> unit.getSerial()).orElse(""))
                .add("What is done", Spans.words(plan.procedures().stream().map(Names::of).toList()));
        facts.add("Done already", titles(adding.request().done()));
        words.first().ifPresent(first -> words.more().ifPresent(more -> facts
                .add("Agreed so far", money(first.total()) + " (sheet of " + first.day() + ")").add("More now", money(more))));
        facts.add(priced(), List.of(Span.strong(money(total()))));
        if (words.first().isEmpty()) {
            facts.add("If it goes badly", "about " + money(price.totalBad()) + ", such as with seized bolts; we ask you first");
        }
        sheet.facts(facts.add("Valid until", words.validUntil().orElse(price.validUntil()))
                .add("Ready at the earliest", PlanPage.moment(plan.times().handBack())));
    }

    private String priced() {
        return words.first().isPresent() && words.more().isPresent() ? "In all, with tax"
                : plan.request().isFromClosed() ? "Price with tax" : "Price with tax for what is left";
    }

    private BigDecimal total() {
        return words.first().flatMap(first -> words.more().map(first.total()::add)).orElse(plan.price().total());
    }

    private void changed() {
        words.first().ifPresent(first -> {
            var now = new TreeSet<>(adding.request().procedures());
            var came = new TreeSet<>(now);
            came.removeAll(first.procedures());
            var gone = new TreeSet<>(first.procedures());
            gone.removeAll(now);
            gone.removeAll(adding.request().done());
            sheet.heading(2, "What changed against the sheet of " + first.day());
            sheet.facts(new Facts().add("Came in", titles(came)).add("Dropped", titles(gone))
                    .add("Price with tax", money(first.total()) + " then, " + money(total()) + " now")
                    .add("Ready", first.handBack() + " then, " + plan.times().handBack().toLocalDate() + " now"));
        });
    }

    private String titles(Iterable<String> ids) {
        var titles = new ArrayList<String>();
        ids.forEach(id -> titles.add(title(id)));
        return String.join("; ", titles);
    }

    private String title(String id) {
        return adding.proposal(id).map(Proposal::title).orElseGet(() -> library.top(id).map(Names::of).orElse(id));
    }

    private void options() {
        var offered = adding.proposals().stream().filter(one -> !words.declined().contains(one.id())).toList();
        var rows = new Rows("What else could be done now, your choice (" + adding.currency() + ", with tax)", "Work", "Extra if done now",
                "If it must come apart again", "How often we have seen it", "You want it");
        offered.stream().limit(MOST).forEach(one -> rows.row(Spans.of(one.title()), Spans.of(extra(one)), Spans.of(later(one)),
                Spans.of(risk(one)), Spans.of(BOXES)));
        sheet.table(rows);
        if (offered.size() > MOST) {
            sheet.paragraph(Spans.of("There are " + (offered.size() - MOST) + " more that we can show you."));
        }
    }

    private static String extra(Proposal one) {
        return about(one) + AddingPage.amount(one.assumptions().customer().extra());
    }

    private static String later(Proposal one) {
        var sum = one.assumptions().customer();
        var ruins = sum.again().ruins();
        return about(one) + AddingPage.amount(sum.apartLater()) + (ruins.signum() == 0 ? ""
                : "; " + AddingPage.amount(ruins) + " of it only if it has ruined other parts by then");
    }

    private static String about(Proposal one) {
        return one.basis() == Proposal.Basis.NOTE ? "about " : "";
    }

    private static String risk(Proposal one) {
        var seen = one.assumptions().find(Figure.COMES_BACK).filter(it -> it.byHand()).isPresent()
                ? CountWords.oneIn(one.assumptions().value(Figure.COMES_BACK).doubleValue() / 100)
                        + ", by what we take it to be" : one.known().words();
        return "Left in, it came back: " + seen + (one.reasons().contains(Reason.CAN_HURT)
                ? ". Its failure can hurt somebody: its condition decides, not the money" : "");
    }

    private void declined() {
        var lines = new ArrayList<List<Span>>();
        for (var id : words.declined()) {
            var one = adding.proposal(id);
            lines.add(Spans.of(title(id) + one.map(it -> ": if it must come apart again " + later(it) + ". " + risk(it)).orElse("")));
        }
        sheet.bullets(2, "Declined by you, and left as it is", lines);
    }

    private void choice() {
        sheet.heading(2, "Your choice");
        sheet.paragraph(Spans.of("[ ] Do what stands at the top, and what I ticked.   [ ] Do nothing yet and call me."));
        sheet.paragraph(Spans.of("Name: " + LINE + "  Date: ____________  Signature: " + LINE));
    }

    private EarlierSheet reference() {
        var all = new TreeSet<>(words.first().map(EarlierSheet::procedures).orElse(List.of()));
        all.addAll(adding.request().procedures());
        return new EarlierSheet(adding.request().today(), adding.request().subject(), List.copyOf(all), total(), adding.currency(),
                plan.times().handBack().toLocalDate());
    }

    private String money(BigDecimal amount) {
        return AddingPage.amount(amount) + (adding.currency().isEmpty() ? "" : " " + adding.currency());
    }
}
