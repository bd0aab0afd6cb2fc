// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.model.Kind;
import org.benchlore.model.Person;
import org.benchlore.model.Shop;
import org.benchlore.model.Site;

/** The page of the shop: money, rules, people, and what its sites have. */
final class ShopPage implements KindPage {

    private final Shop shop;
    private final Scope scope;
    private final Links links;

    ShopPage(Shop shop, Scope scope) {
        this.shop = shop;
        this.scope = scope;
        this.links = scope.links();
    }

    @Override
    public void write(Sheet sheet) {
        facts(sheet);
        rates(sheet);
        people(sheet);
        shop.getSites().forEach(site -> site(sheet, site));
        var rows = new Rows("Rules silenced", "Rule", "For", "Reason", Texts.BY, Texts.DATE);
        shop.getSuppressions().forEach(it -> rows.row(Spans.of(it.getRule()), Spans.of(it.getAddress()),
                links.text(it.getReason(), it), links.to(it.getBy()), Spans.of(it.getOn())));
        sheet.table(rows);
        weights(sheet);
    }

    private void weights(Sheet sheet) {
        var rows = new Rows("What counts for how much when causes are ranked", "What", Texts.VALUE, "Source");
        shop.getWeights().forEach(weight -> rows.row(Spans.of(Labels.of(weight.getKind())),
                Spans.of(weight.getValue()), Spans.of(weight.getSource())));
        sheet.table(rows);
    }

    private void facts(Sheet sheet) {
        sheet.facts(KindPage.facts(Kind.SHOP, scope).add("Currency", shop.getCurrency())
                .add("Tax", with(shop.getTaxPercent(), " %"))
                .add("Prices are rounded", Labels.of(shop.getRounding()))
                .add("What a comeback costs", scope.prices().amount(shop.getComebackCost()))
                .add("A job is followed for", with(shop.getFollowMonths(), " months"))
                .add("An author's own figure is worth", with(shop.getPriorWorth(), " jobs of our own"))
                .add("A job on the same family is worth",
                        with(shop.getFamilyWeight(), " of a job on the machine itself"))
                .add("How sure the band is", with(shop.getSurePercent(), " %"))
                .add("Renewing itself brings trouble in", with(shop.getRenewTroublePercent(), " % of jobs"))
                .add("A wrench is due after", Spans.join(" or ", List.of(
                        Spans.of(with(shop.getCalibrationMonths(), " months")),
                        Spans.of(with(shop.getCalibrationUses(), " uses"))))));
    }

    private static String with(Object value, String unit) {
        return value == null ? "" : value + unit;
    }

    private void rates(Sheet sheet) {
        var rows = new Rows("Labour rates", "Rate", "One hour without tax", Texts.SKILL, "Since");
        shop.getRates().forEach(rate -> rows.row(Spans.of(Names.of(rate)),
                Spans.of(scope.prices().amount(rate.getPerHour())), Spans.of(Labels.of(rate.getSkill())),
                Spans.of(rate.getSince())));
        sheet.table(rows);
    }

    private void people(Sheet sheet) {
        var rows = new Rows("People", "Name", "Initials", Texts.SKILL, Texts.QUALIFICATIONS, Texts.REMARK);
        shop.getPeople().forEach(person -> rows.row(Spans.of(Names.of(person)), Spans.of(person.getInitials()),
                Spans.of(Labels.of(person.getSkill())), Spans.of(Labels.of(person.getQualifications())),
                Spans.of(left(person))));
        sheet.table(rows);
    }

    private static String left(Person person) {
        return person.getLeft() == null ? "" : "left on " + person.getLeft();
    }

    private void site(Sheet sheet, Site site) {
        sheet.heading(2, Names.of(site));
        var tools = new Rows("Tools", Texts.TOOL, Texts.PLACE, "Own number", "Calibrated on", "Due again",
                "Uses since");
        site.getTools().forEach(it -> tools.row(links.to(it.getTool()), Spans.of(it.getPlace()),
                Spans.of(it.getSerial()), Spans.of(it.getCalibratedOn()), Spans.of(it.getCalibrationDue()),
                Spans.of(it.getUses())));
        sheet.table(tools);
        var stock = new Rows("Stock", "Part or supply", Texts.QUANTITY, Texts.PLACE, "Counted on");
        site.getStock().forEach(line -> stock.row(
                Spans.join(", ", List.of(links.to(line.getPart()), links.to(line.getSupply()))),
                Spans.of(line.getQuantity()), Spans.of(line.getPlace()), Spans.of(line.getCountedOn())));
        sheet.table(stock);
    }
}
