// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.benchlore.model.Rounding;
import org.benchlore.model.Shop;
import org.benchlore.model.Skill;

/**
 * What the customer pays. Every line is rounded half up to cents, tax is worked out once on the sum, and the total is
 * rounded half up as the shop says.
 *
 * @param labour labour lines
 * @param parts parts that are always renewed
 * @param supplies supplies, as shares of their packs
 * @param net sum without tax
 * @param taxPercent tax in per cent, empty if the shop has not written it down
 * @param tax the tax
 * @param total what is paid when nothing is seized
 * @param totalBad what is paid when it goes badly
 * @param rounding how the totals are rounded, in words
 * @param currency ISO 4217 code, or empty
 * @param validUntil the last day on which the price holds
 * @param flags what makes the price uncertain, a sentence each
 */
public record PlanPrice(List<PriceLine> labour, List<PriceLine> parts, List<PriceLine> supplies, BigDecimal net,
        Optional<BigDecimal> taxPercent, BigDecimal tax, BigDecimal total, BigDecimal totalBad, String rounding,
        String currency, LocalDate validUntil, List<String> flags) {

    /** Days for which a price is good; an assumption that the plan states. */
    public static final int VALID_DAYS = 30;
    private static final int CENTS = 2;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /**
     * A line of a price.
     *
     * @param what what it is for
     * @param how how it was worked out
     * @param amount in the shop's currency, two decimals
     */
    public record PriceLine(String what, String how, BigDecimal amount) {
    }

    static PlanPrice of(List<PlanItem> items, List<PartLine> parts, List<SupplyLine> supplies, PlanRequest request,
            Optional<Shop> shop) {
        var rates = new LabourRates(shop, request.today());
        var flags = new PriceFlags(request.today());
        var labour = request.fixedLabour().map(fixed -> List.of(new PriceLine("Labour", "agreed price for the whole job",
                cents(fixed.value())))).orElseGet(() -> labour(items, rates, false));
        var bad = request.fixedLabour().isPresent() ? labour : labour(items, rates, true);
        var partLines = parts.stream().filter(line -> !line.isOnlyIfFound() && line.quantity() > 0).map(PlanPrice::line).toList();
        var supplyLines = supplies.stream().filter(line -> line.price().isPresent()).map(PlanPrice::line).toList();
        var rest = sum(partLines).add(sum(supplyLines));
        var percent = shop.flatMap(it -> Optional.ofNullable(it.getTaxPercent()));
        var net = sum(labour).add(rest);
        var tax = tax(net, percent);
        var netBad = sum(bad).add(rest);
        var rounding = shop.map(Shop::getRounding).orElse(Rounding.NOT_RECORDED);
        return new PlanPrice(labour, partLines, supplyLines, net, percent, tax, round(net.add(tax), rounding),
                round(netBad.add(tax(netBad, percent)), rounding), words(rounding), shop.map(Shop::getCurrency).orElse(""),
                request.today().plusDays(VALID_DAYS), flags.of(items, parts, supplies, shop, rates));
    }

    private static List<PriceLine> labour(List<PlanItem> items, LabourRates rates, boolean isBad) {
        Map<Skill, Long> minutes = new LinkedHashMap<>();
        items.forEach(item -> minutes.merge(item.skill(), item.people()
                * (isBad ? item.minutes().bad() : item.minutes().usual()), Long::sum));
        var lines = new ArrayList<PriceLine>();
        minutes.entrySet().stream().sorted(Map.Entry.comparingByKey()).filter(entry -> entry.getValue() > 0).forEach(entry -> {
            var rate = rates.of(entry.getKey());
            lines.add(new PriceLine("Labour, " + entry.getKey().getLiteral().toLowerCase(Locale.ROOT),
                    entry.getValue() + " min" + rate.map(it -> " at " + it.getPerHour() + " an hour").orElse(", no rate"),
                    cents(new WorkFacts(null, rates).labour(entry.getValue(), entry.getKey()))));
        });
        return lines;
    }

    private static PriceLine line(PartLine line) {
        var price = line.part().flatMap(part -> Optional.ofNullable(part.getPrice()));
        return new PriceLine(line.part().map(Titles::of).orElse(line.id()),
                line.quantity() + " × " + price.map(Object::toString).orElse("no price"),
                cents(price.map(it -> it.value().multiply(BigDecimal.valueOf(line.quantity()))).orElse(BigDecimal.ZERO)));
    }

    private static PriceLine line(SupplyLine line) {
        return new PriceLine(line.supply().map(Titles::of).orElse(line.id()), String.join(", ",
                line.quantities().stream().map(Object::toString).toList()), cents(line.price().orElse(BigDecimal.ZERO)));
    }

    private static BigDecimal sum(List<PriceLine> lines) {
        return lines.stream().map(PriceLine::amount).reduce(BigDecimal.ZERO.setScale(CENTS), BigDecimal::add);
    }

    private static BigDecimal tax(BigDecimal net, Optional<BigDecimal> percent) {
        return percent.map(it -> net.multiply(it).divide(HUNDRED, CENTS, RoundingMode.HALF_UP))
                .orElse(BigDecimal.ZERO.setScale(CENTS));
    }

    private static BigDecimal cents(BigDecimal amount) {
        return amount.setScale(CENTS, RoundingMode.HALF_UP);
    }

    private static BigDecimal round(BigDecimal amount, Rounding rounding) {
        int decimals = switch (rounding) {
            case NOT_RECORDED, SMALLEST_COIN -> CENTS;
            case TENTH -> 1;
            case WHOLE -> 0;
        };
        return cents(amount.setScale(decimals, RoundingMode.HALF_UP));
    }

    private static String words(Rounding rounding) {
        return switch (rounding) {
            case NOT_RECORDED -> "to 0.01, half up; the shop has not said how";
            case SMALLEST_COIN -> "to 0.01, half up";
            case TENTH -> "to 0.10, half up";
            case WHOLE -> "to 1, half up";
        };
    }
}
