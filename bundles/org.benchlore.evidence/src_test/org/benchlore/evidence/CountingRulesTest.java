// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;

import org.benchlore.model.BookFactory;
import org.junit.jupiter.api.Test;

class CountingRulesTest {

    @Test
    void aShopThatSaysNothingCountsAsUsual() {
        assertEquals(CountingRules.usual(), CountingRules.of(BookFactory.eINSTANCE.createShop()));
        assertEquals(new CountingRules(6, 10, 0.5, 80, 0.5), CountingRules.usual());
    }

    @Test
    void whatAShopSaysHolds() {
        var rules = new CountingRules(12, 20, 0.25, 90, 1.5);
        var shop = BookFactory.eINSTANCE.createShop();
        rules.into(shop);
        assertEquals(rules, CountingRules.of(shop));
        assertEquals("20", shop.getPriorWorth().toString());
        assertEquals("1.5", shop.getRenewTroublePercent().toString());
    }

    @Test
    void nonsenseIsTakenToTheNearestSense() {
        var shop = BookFactory.eINSTANCE.createShop();
        shop.setPriorWorth(BigDecimal.ZERO);
        shop.setFamilyWeight(new BigDecimal("3"));
        shop.setSurePercent(new BigDecimal("250"));
        shop.setRenewTroublePercent(new BigDecimal("250"));
        assertEquals(new CountingRules(6, 0.01, 1, 99.9, 100), CountingRules.of(shop));
    }
}
