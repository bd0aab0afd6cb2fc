// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import static org.benchlore.plan.QuayCrane.way;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.benchlore.measure.Amount;
import org.benchlore.measure.Quantity;
import org.benchlore.model.BookFactory;
import org.benchlore.model.Shop;
import org.benchlore.model.Skill;
import org.benchlore.plan.PlanPrice.PriceLine;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prices reckoned by hand beside each check, and what makes them uncertain. */
class PriceTest {

    private static final String TWO_RATES = "<rates id=\"r1\" perHour=\"30.00\" skill=\"APPRENTICE\"/>"
            + "<rates id=\"r2\" perHour=\"60.00\" skill=\"TECHNICIAN\"/>";

    @TempDir
    Path folder;

    private QuayCrane crane;

    @BeforeEach
    void partsAndSupplies() throws Exception {
        crane = new QuayCrane(folder).put("parts/pump.xmi", "Part", "id=\"pump\" title=\"Pump\" price=\"100.00\" priceOn=\"2025-03-04\"", "")
                .put("parts/seal.xmi", "Part", "id=\"seal\" price=\"0.333\"", "<supersededBy href=\"pump.xmi#pump\"/>")
                .put("parts/bolt.xmi", "Part", "id=\"bolt\" title=\"Bolt\"", "")
                .put("supplies/oil.xmi", "Supply", "id=\"oil\" title=\"Oil\" price=\"20.00\" pack=\"4 L\" priceOn=\"2025-03-03\"", "")
                .put("supplies/rag.xmi", "Supply", "id=\"rag\" title=\"Rag\"", "");
    }

    private static String part(String id, String attributes) {
        return "<parts id=\"use-" + id + "\" " + attributes + "><part href=\"../parts/" + id + ".xmi#" + id + "\"/></parts>";
    }

    private static String supply(String use, String id, String attributes) {
        return "<supplies id=\"" + use + "\" " + attributes + "><supply href=\"../supplies/" + id + ".xmi#" + id + "\"/></supplies>";
    }

    private PlanPrice price(String shop, String rates, String work, String body) throws Exception {
        crane.shop(shop, rates).procedure("renew", "RENEW", "", way("way", "", work, body));
        return crane.plan("renew").price();
    }

    private static BigDecimal money(String amount) {
        return new BigDecimal(amount);
    }

    /** 40 min of two at 60 an hour: 80.00, bad 50 min: 100.00. Pump 200.00; oil 1.5 of 4 L at 20.00: 7.50. Tax 10 %. */
    @Test
    void thePriceIsPeopleTimesMinutesWithPartsAndSharesOfPacks() throws Exception {
        var price = price("currency=\"EUR\" taxPercent=\"10\"", TWO_RATES, "minutesUsual=\"40 min\" minutesBad=\"50 min\" people=\"2\"",
                part("pump", "quantity=\"2\"") + supply("s1", "oil", "quantity=\"1 L\" way=\"IN\"")
                + supply("s2", "oil", "quantity=\"500 mL\" way=\"ONTO\"") + supply("s3", "oil", "quantity=\"3 L\" way=\"OUT\"")
                + part("bolt", "need=\"IF_FOUND\""));
        assertEquals(List.of(new PriceLine("Labour, technician", "80 min at 60.00 an hour", money("80.00"))), price.labour());
        assertEquals(List.of(new PriceLine("Pump", "2 × 100.00", money("200.00"))), price.parts());
        assertEquals(List.of(new PriceLine("Oil", "1.5 l", money("7.50"))), price.supplies());
        assertEquals(List.of(money("287.50"), money("28.75"), money("316.25"), money("338.25")),
                List.of(price.net(), price.tax(), price.total(), price.totalBad()));
        assertEquals("EUR", price.currency());
        assertEquals("to 0.01, half up; the shop has not said how", price.rounding());
        assertEquals(QuayCrane.WEDNESDAY.plusDays(30), price.validUntil());
    }

    /** 1 min at 60 is 1.00; with 7.6 % tax 1.08 (0.076 rounds up to 0.08). */
    @Test
    void theTotalIsRoundedAsTheShopSays() throws Exception {
        assertEquals(money("1.08"), price("taxPercent=\"7.6\" rounding=\"SMALLEST_COIN\"", TWO_RATES, "minutesUsual=\"1 min\"", "").total());
        var tenth = price("taxPercent=\"7.6\" rounding=\"TENTH\"", TWO_RATES, "minutesUsual=\"1 min\"", "");
        assertEquals(money("1.10"), tenth.total());
        assertEquals("to 0.10, half up", tenth.rounding());
        var whole = price("taxPercent=\"7.6\" rounding=\"WHOLE\"", TWO_RATES, "minutesUsual=\"1 min\"", "");
        assertEquals(money("1.00"), whole.total());
        assertEquals("to 1, half up", whole.rounding());
        assertEquals("to 0.01, half up", price("rounding=\"SMALLEST_COIN\"", "", "", "").rounding());
    }

    /** 30 min of an apprentice at 30: 15.00, 30 of a senior at the highest there is: 30.00; by skill. */
    @Test
    void labourStandsBySkillAndNothingOfNoTime() throws Exception {
        crane.procedure("a", "RENEW", "", way("wa", "", "minutesUsual=\"30 min\" skill=\"SENIOR\"", ""))
                .procedure("b", "RENEW", "skill=\"APPRENTICE\"", way("wb", "", "minutesUsual=\"30 min\"", ""))
                .procedure("c", "RENEW", "", way("wc", "", "", ""));
        crane.shop("", TWO_RATES);
        assertEquals(List.of(new PriceLine("Labour, apprentice", "30 min at 30.00 an hour", money("15.00")),
                new PriceLine("Labour, senior", "30 min at 60.00 an hour", money("30.00"))), crane.plan("a", "b", "c").price().labour());
    }

    @Test
    void withoutRateTaxAndPricesItCountsNothingAndSaysSo() throws Exception {
        var price = price("", "", "minutesUsual=\"30 min\"", part("bolt", "") + supply("s1", "rag", "quantity=\"2\"")
                + supply("s2", "oil", "quantity=\"1 kg\" way=\"IN\"") + part("gone", "quantity=\"2\""));
        assertEquals(List.of(new PriceLine("Labour, technician", "30 min, no rate", money("0.00"))), price.labour());
        assertEquals(List.of("1 × no price", "2 × no price"), price.parts().stream().map(PriceLine::how).toList());
        assertEquals(List.of(), price.supplies());
        assertEquals(money("0.00"), price.total());
        assertEquals(List.of("The shop's tax is not recorded: none was added.",
                "The shop has no labour rate that holds today: labour counts nothing.", "No price for 'Bolt': it counts nothing.",
                "No price for 'gone': it counts nothing.", "No price for 'Rag' by its quantity: it counts nothing.",
                "No price for 'Oil' by its quantity: it counts nothing.", "Times never compared with real jobs: Renew."), price.flags());
    }

    @Test
    void aPriceOfAYearAgoIsGoodAndADayOlderIsNamed() throws Exception {
        var price = price("taxPercent=\"10\"", TWO_RATES, "minutesUsual=\"9 min\" minutesCheckedOn=\"2026-01-01\"", part("pump", "")
                + part("seal", "") + supply("s1", "oil", "quantity=\"1 L\" way=\"IN\"") + supply("s2", "rag", "way=\"OUT\""));
        assertEquals(List.of("The day of the price of 'seal' is not recorded.", "'seal' is superseded: order what replaces it.",
                "The price of 'Oil' is of 2025-03-03."), price.flags());
        assertEquals(money("0.33"), price.parts().get(1).amount());
    }

    @Test
    void whatHasNoTimeIsNamedOnceApartFromWhatWasNeverChecked() throws Exception {
        crane.shop("taxPercent=\"10\"", TWO_RATES).procedure("a", "RENEW", "", way("wa", "", "", ""))
                .procedure("b", "RENEW", "wholeJobUsual=\"1 h\"", "").procedure("c", "RENEW", "", way("wc", "",
                        "minutesUsual=\"3 min\" minutesCheckedOn=\"2020-01-01\"", "") + "<verifications id=\"v\" kind=\"OTHER\"/>");
        assertEquals(List.of("Times never compared with real jobs: B.", "No time recorded, counted as none: A."),
                crane.plan("a", "b", "c").price().flags());
    }

    @Test
    void anAgreedPriceStandsForUsualAndBadAlike() throws Exception {
        crane.shop("", TWO_RATES).procedure("renew", "RENEW", "", way("way", "", "minutesUsual=\"1 h\" minutesBad=\"9 h\"", ""));
        try (var library = crane.open()) {
            var price = new Planner(library).plan(new PlanRequest("crane-1", List.of("renew"), List.of(), List.of(),
                    QuayCrane.WEDNESDAY, Optional.of(Amount.parse("50")))).price();
            assertEquals(List.of(new PriceLine("Labour", "agreed price for the whole job", money("50.00"))), price.labour());
            assertEquals(List.of(money("50.00"), money("50.00")), List.of(price.total(), price.totalBad()));
        }
    }

    @Test
    void separateVisitsAreAddedUpAndTheSavingIsWhatOneVisitSpares() throws Exception {
        crane.crane(QuayCrane.access("hood", "", "minutesUsual=\"60 min\"", "minutesUsual=\"60 min\" minutesBad=\"70 min\"", ""))
                .shop("", TWO_RATES).work("a", "RENEW", "hood", "", "").work("b", "RENEW", "hood", "", "");
        var visits = crane.plan("a", "b").visits().orElseThrow();
        assertEquals(List.of("A", "B"), visits.alone().stream().map(Visits.Alone::title).toList());
        assertEquals(new Minutes(260, 280), visits.minutes());
        assertEquals(List.of(money("260.00"), money("120.00")), List.of(visits.total(), visits.savedMoney()));
        assertEquals(120, visits.savedMinutes());
        assertFalse(crane.plan("a").visits().isPresent());
    }

    /** With the hood off the first visit spares its strip, the second does not; what is done already saves nobody anything. */
    @Test
    void aMachineThatStandsOpenIsOpenForTheFirstVisitOnly() throws Exception {
        crane.crane(QuayCrane.access("hood", "", "minutesUsual=\"60 min\"", "minutesUsual=\"60 min\" minutesBad=\"70 min\"", ""))
                .shop("", TWO_RATES).work("a", "RENEW", "hood", "", "").work("b", "RENEW", "hood", "", "");
        var visits = crane.plan(List.of("a", "b"), List.of("hood"), List.of()).visits().orElseThrow();
        assertEquals(List.of(true, false), visits.alone().stream().map(Visits.Alone::isFromNow).toList());
        assertEquals(120, visits.savedMinutes());
        assertFalse(crane.plan(List.of("a", "b"), List.of("hood"), List.of("a")).visits().isPresent());
    }

    private static Shop rates(String... rates) {
        var shop = BookFactory.eINSTANCE.createShop();
        for (var rate : rates) {
            var words = rate.split(" ");
            var one = BookFactory.eINSTANCE.createRate();
            one.setId(words[0]);
            one.setSkill(Skill.valueOf(words[1]));
            one.setPerHour(words[2].equals("-") ? null : Amount.parse(words[2]));
            one.setSince(words.length > 3 ? java.time.LocalDate.parse(words[3]) : null);
            shop.getRates().add(one);
        }
        return shop;
    }

    private static String rate(Skill skill, String... rates) {
        return new LabourRates(Optional.of(rates(rates)), QuayCrane.WEDNESDAY).of(skill).map(it -> it.getId()).orElse("none");
    }

    @Test
    void theNewestRateOfTheSkillThatHoldsTodayIsCharged() {
        assertEquals("b", rate(Skill.TECHNICIAN, "a TECHNICIAN 50 2025-01-01", "b TECHNICIAN 60 2026-03-04", "c TECHNICIAN 70 2026-03-05"));
        assertEquals("a", rate(Skill.TECHNICIAN, "z TECHNICIAN 50", "a TECHNICIAN 60 2020-01-01"), "one without a day is the oldest");
        assertEquals("a", rate(Skill.TECHNICIAN, "b TECHNICIAN 50", "a TECHNICIAN 60"), "of two of a day the first by id");
        assertEquals("b", rate(Skill.TECHNICIAN, "a TECHNICIAN -", "b TECHNICIAN 60"));
    }

    @Test
    void elseTheNextHigherSkillsRateElseTheHighest() {
        assertEquals("b", rate(Skill.TECHNICIAN, "a APPRENTICE 50", "b SENIOR 60", "c SPECIALIST 55"));
        assertEquals("c", rate(Skill.SPECIALIST, "a APPRENTICE 50", "c SENIOR 60", "d TECHNICIAN 55"));
        assertEquals("c", rate(Skill.SPECIALIST, "a APPRENTICE 60", "c SENIOR 60"));
        assertEquals("none", rate(Skill.TECHNICIAN, "a TECHNICIAN 50 2027-01-01"));
        assertEquals(BigDecimal.ZERO, new LabourRates(Optional.empty(), QuayCrane.WEDNESDAY).perHour(Skill.SENIOR));
    }

    @Test
    void aShareOfAPackIsReckonedInItsUnitAndOnlyWhereTheyCompare() {
        var oil = BookFactory.eINSTANCE.createSupply();
        assertEquals(Optional.empty(), WorkFacts.price(oil, Quantity.parse("1 L")));
        oil.setPrice(Amount.parse("10.00"));
        assertEquals(Optional.empty(), WorkFacts.price(oil, Quantity.parse("1 L")), "no pack");
        oil.setPack(Quantity.parse("0 L"));
        assertEquals(Optional.empty(), WorkFacts.price(oil, Quantity.parse("1 L")), "an empty pack");
        oil.setPack(Quantity.parse("4 L"));
        assertEquals(0, money("1.25").compareTo(WorkFacts.price(oil, Quantity.parse("500 mL")).orElseThrow()));
        assertEquals(Optional.empty(), WorkFacts.price(oil, Quantity.parse("1 kg")));
        assertEquals(Optional.empty(), WorkFacts.price(oil, null));
    }
}
