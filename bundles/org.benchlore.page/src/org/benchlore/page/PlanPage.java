// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.benchlore.model.Hazard;
import org.benchlore.model.Procedure;
import org.benchlore.model.Signal;
import org.benchlore.model.TopElement;
import org.benchlore.model.Work;
import org.benchlore.page.Block.Tone;
import org.benchlore.plan.Minutes;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanItem;
import org.benchlore.plan.PlanTimes;
import org.benchlore.store.Library;

/** Writes what a plan says: what it takes, in which order, what is missing, what it costs, what one visit saves. */
public final class PlanPage {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEEE yyyy-MM-dd HH:mm", Locale.ENGLISH);

    private final Library library;
    private final Plan plan;
    private final Links links;
    private final Sheet sheet = new Sheet();

    private PlanPage(Library library, Plan plan) {
        this.library = library;
        this.plan = plan;
        this.links = new Links(library, null);
    }

    /**
     * Makes the page of a plan.
     *
     * @param library the library the plan was made from
     * @param plan a plan
     * @return its page
     */
    public static Page of(Library library, Plan plan) {
        return new PlanPage(library, plan).page();
    }

    private Page page() {
        var title = "Plan: " + Names.of(subject(plan));
        sheet.heading(1, title);
        banners(sheet, plan);
        summary();
        sheet.bullets(2, "Missing", missing());
        comparison();
        order();
        new PlanTables(sheet, plan).write();
        torque(sheet, library, plan);
        sheet.bullets(2, "To know", plan.remarks().stream().map(remark -> Spans.of(remark)).toList());
        sheet.banner(Tone.CAUTION, Texts.CHECK_FIRST);
        return new Page(title, sheet.blocks());
    }

    static TopElement subject(Plan plan) {
        return plan.unit().<TopElement>map(unit -> unit).orElse(plan.machine());
    }

    static void banners(Sheet sheet, Plan plan) {
        if (plan.machine().isInvented()) {
            sheet.banner(Tone.INVENTED, Texts.INVENTED);
        }
        if (plan.needsSenior()) {
            sheet.banner(Tone.ATTENTION, "Nobody has reviewed this strip as a whole: a senior signs it before work begins."
                    + " Senior: ____________  Date: ____________");
        }
    }

    private void summary() {
        var times = plan.times();
        sheet.facts(new Facts().add(Texts.MACHINE, links.to(plan.machine()))
                .add("To be done", links.joined(plan.procedures()))
                .add("Open now", Spans.words(plan.request().open().stream().map(this::access).toList()))
                .add("Done", Spans.join(", ", plan.request().done().stream().map(this::procedure).toList()))
                .add(Texts.TIME, range(times.minutes()) + " by the clock; charged: " + range(times.billed()))
                .add("People", plan.items().stream().mapToInt(PlanItem::people).max().orElse(1) + " at most at a time")
                .add("Nobody works for", times.unattended() == 0 ? "" : hours(times.unattended()))
                .add("Earliest hand-back", moment(times.handBack()))
                .add("Price with tax", plan.price().total() + " usually, " + plan.price().totalBad() + " when it goes badly "
                        + plan.price().currency() + "; good until " + plan.price().validUntil())
                .add("Cheapest plan", plan.solution().isExact() ? "yes, of the ways and times written down none costs less" + wholeJobs()
                        : "not proved; at most " + cents(plan.solution().gap()) + " dearer than the cheapest"));
    }

    private String wholeJobs() {
        return plan.hasWholeJobs() ? "; what whole jobs share is not seen" : "";
    }

    private String access(String id) {
        return plan.machine().getAccesses().stream().filter(it -> it.getId().equals(id)).map(Names::of).findFirst().orElse(id);
    }

    private List<Span> procedure(String id) {
        return library.catalogue().byId(id).map(links::to).map(List::of).orElseGet(() -> Spans.of(id));
    }

    static String moment(LocalDateTime moment) {
        return MOMENT.format(moment);
    }

    static String cents(long cents) {
        return java.math.BigDecimal.valueOf(cents, 2).toPlainString();
    }

    /** Minutes in words: '50 min', '6 h 05 min'. */
    static String hours(long minutes) {
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + (minutes % 60 < 10 ? "0" : "") + minutes % 60 + " min";
    }

    static String range(Minutes minutes) {
        return minutes.usual() == minutes.bad() ? hours(minutes.usual())
                : hours(minutes.usual()) + " usually, " + hours(minutes.bad()) + " when it goes badly";
    }

    private List<List<Span>> missing() {
        var lines = new ArrayList<List<Span>>();
        plan.tools().stream().filter(line -> line.isMissing()).forEach(line -> lines.add(Spans.of("Tool: "
                + line.tool().map(Names::of).orElse(line.id()) + " hangs at no site of the shop.")));
        plan.tools().stream().filter(line -> line.isDue()).forEach(line -> lines.add(Spans.of("Tool: "
                + line.tool().map(Names::of).orElse(line.id()) + " is due for calibration.")));
        plan.lacks().forEach(lack -> lines.add(Spans.of(lack)));
        plan.parts().stream().filter(line -> line.isMissing() && !line.isOnlyIfFound() && line.quantity() > 0)
                .forEach(line -> lines.add(Spans.of("Part: " + line.part().map(Names::of).orElse(line.id()) + ", "
                        + line.quantity() + " needed, " + line.stock().toPlainString() + " on the shelf"
                        + (line.leadMinutes() > 0 ? ", comes in " + days(line.leadMinutes()) : "") + ".")));
        return lines;
    }

    static String days(long minutes) {
        long days = Math.round(minutes / 1440.0);
        return minutes < 1440 ? hours(minutes) : days + (days == 1 ? " day" : " days");
    }

    private void comparison() {
        plan.visits().ifPresent(visits -> {
            var rows = new Rows("Against separate visits", "Alone", "Time", "Price with tax");
            visits.alone().forEach(one -> rows.row(Spans.of(one.title() + (one.isFromNow() ? " (first, from how it stands)" : "")),
                    Spans.of(hours(one.minutes().usual())), Spans.of(one.total())));
            rows.row(Spans.of("Together in one visit"), Spans.of(hours(plan.times().minutes().usual())),
                    Spans.of(plan.price().total()));
            rows.row(List.of(Span.strong("One visit saves")), Spans.of(signed(visits.savedMinutes())),
                    Spans.of(visits.savedMoney()));
            sheet.table(rows);
        });
        plan.first().ifPresent(first -> {
            sheet.heading(2, "What changed against the first plan");
            sheet.facts(new Facts().add("First plan", hours(first.minutes().usual()) + ", " + first.total() + " with tax")
                    .add("Now", hours(plan.times().minutes().usual()) + ", " + plan.price().total() + " with tax")
                    .add("No longer to do", Spans.words(first.gone())).add("Came in", Spans.words(first.added())));
        });
    }

    private static String signed(long minutes) {
        return minutes < 0 ? "-" + hours(-minutes) : hours(minutes);
    }

    private void order() {
        var rows = new Rows("Order", "No.", "Part of the job", "What", "Machine first", "Time", "People", "Hazards");
        int number = 1;
        for (var item : plan.items()) {
            rows.row(Spans.of(number++), Spans.of(part(item)), what(item), Spans.of(states(item)), Spans.of(time(item)),
                    Spans.of(item.people() > 1 ? item.people() : ""), Spans.of(hazards(item)));
        }
        sheet.table(rows);
    }

    private List<Span> what(PlanItem item) {
        var words = PlanWords.title(item) + (item.isAgain() ? " (a second time)" : "");
        if (item.proof().isPresent()) {
            return Spans.concat(Spans.of(words), Spans.before(": ", links.text(item.proof().get().getText(), item.proof().get())));
        }
        return item.owner() instanceof Procedure procedure
                ? links.address(procedure).map(address -> List.<Span>of(new Span.Link(words, address)))
                        .orElseGet(() -> Spans.of(words)) : Spans.of(words);
    }

    static String part(PlanItem item) {
        return switch (item.part()) {
            case BEFORE -> "before the strip";
            case STRIP -> "strip";
            case WORK -> "work";
            case REFIT -> "refit";
            case CLOSING -> "after closing";
            case PROOF -> "proof";
        };
    }

    private static String states(PlanItem item) {
        return !item.change().isEmpty() ? Labels.of(item.change())
                : item.work().filter(work -> !work.getStates().isEmpty()).isPresent() ? "as it is" : "";
    }

    private static String time(PlanItem item) {
        long pause = PlanTimes.unattended(item);
        return (item.minutes().bad() == 0 ? Texts.NOT_RECORDED
                : item.minutes().usual() == item.minutes().bad() ? item.minutes().usual() + " min"
                : item.minutes().usual() + "–" + item.minutes().bad() + " min") + (pause == 0 ? "" : " + " + hours(pause) + " wait");
    }

    /** The gravest signal word of an item; its panels stand on the job card, before their steps. */
    private static String hazards(PlanItem item) {
        return item.work().map(PlanPage::allHazards).orElse(List.of()).stream().map(Hazard::getSignal)
                .filter(signal -> signal != Signal.NOT_RECORDED).min(java.util.Comparator.comparingInt(Signal::getValue))
                .map(Labels::signal).orElse("");
    }

    private static List<Hazard> allHazards(Work work) {
        return Stream.concat(work.getHazards().stream(), work.getSteps().stream().flatMap(step -> step.getHazards().stream()))
                .toList();
    }

    static void torque(Sheet sheet, Library library, Plan plan) {
        new Fastenings(new Links(library, plan.machine())).table(sheet, plan.items().stream().map(PlanItem::work)
                .flatMap(java.util.Optional::stream).distinct().toList());
    }
}
