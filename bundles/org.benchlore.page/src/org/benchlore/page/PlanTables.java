// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.model.YesNo;
import org.benchlore.plan.PartLine;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanPrice.PriceLine;

/** Writes the lists of a plan: parts with stock and lead time, supplies, tools, price. */
final class PlanTables {

    private final Sheet sheet;
    private final Plan plan;

    PlanTables(Sheet sheet, Plan plan) {
        this.sheet = sheet;
        this.plan = plan;
    }

    void write() {
        lists();
        price();
    }

    void lists() {
        parts();
        supplies();
        tools();
    }

    private void parts() {
        var rows = new Rows("Parts", Texts.PART, Texts.NUMBER, Texts.QUANTITY, "Renew", "On the shelf", "Comes in",
                "Used twice", Texts.REMARK);
        plan.parts().forEach(line -> rows.row(Spans.of(line.part().map(Names::of).orElse(line.id() + Texts.NOT_IN_LIBRARY)),
                Spans.of(line.part().map(part -> part.getNumber()).orElse("")), Spans.of(line.quantity()),
                Spans.of(line.isOnlyIfFound() ? "if found bad" : "always"), Spans.of(line.stock().toPlainString()),
                Spans.of(line.leadMinutes() > 0 ? PlanPage.days(line.leadMinutes()) : ""),
                Spans.of(line.part().filter(part -> part.getSingleUse() == YesNo.YES).isPresent() ? "never" : ""),
                Spans.of(remark(line))));
        sheet.table(rows);
    }

    private static String remark(PartLine line) {
        var kit = line.inKits() > 0 ? line.inKits() + " more come in a kit" : "";
        var deposit = line.part().filter(part -> part.getDeposit() != null)
                .map(part -> "deposit " + part.getDeposit() + ", keep the old part").orElse("");
        return List.of(kit, deposit).stream().filter(text -> !text.isEmpty()).collect(Collectors.joining("; "));
    }

    private void supplies() {
        var rows = new Rows("Supplies", "Supply", Texts.QUANTITY, "How");
        plan.supplies().forEach(line -> rows.row(
                Spans.of(line.supply().map(Names::of).orElse(line.id() + Texts.NOT_IN_LIBRARY)),
                Spans.of(line.quantities().isEmpty() ? Texts.NOT_RECORDED : line.quantities().stream().map(Object::toString)
                        .collect(Collectors.joining(" and "))), Spans.of(line.isOut() ? "comes out: catch it" : "in or onto")));
        sheet.table(rows);
    }

    private void tools() {
        var rows = new Rows("Tools", Texts.TOOL, Texts.PLACE, Texts.REMARK);
        plan.tools().forEach(line -> rows.row(
                Spans.of(line.tool().map(Names::of).orElse(line.id() + Texts.NOT_IN_LIBRARY)),
                Spans.of(line.isMissing() ? "none here" : String.join("; ", line.places())),
                Spans.of(String.join("; ", line.remarks()) + (line.isDue() ? " calibration due" : ""))));
        sheet.table(rows);
    }

    private void price() {
        var price = plan.price();
        var rows = new Rows("Price without tax, " + price.currency(), "What", "How", "Amount");
        price.labour().forEach(line -> row(rows, line));
        price.parts().forEach(line -> row(rows, line));
        price.supplies().forEach(line -> row(rows, line));
        rows.row(List.of(Span.strong("Sum")), List.of(), Spans.of(price.net()));
        price.taxPercent().ifPresent(percent -> rows.row(Spans.of("Tax"), Spans.of(percent.toPlainString() + " %"),
                Spans.of(price.tax())));
        rows.row(List.of(Span.strong("To pay, usually")), Spans.of("rounded " + price.rounding()), Spans.of(price.total()));
        rows.row(Spans.of("To pay when it goes badly"), List.of(), Spans.of(price.totalBad()));
        sheet.table(rows);
        sheet.bullets(3, "The price stands on", price.flags().stream().map(flag -> Spans.of(flag)).toList());
    }

    private static void row(Rows rows, PriceLine line) {
        rows.row(Spans.of(line.what()), Spans.of(line.how()), Spans.of(line.amount()));
    }
}
