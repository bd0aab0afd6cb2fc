// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.time.LocalDate;

import org.benchlore.measure.Amount;
import org.benchlore.model.Kind;
import org.benchlore.model.Shop;
import org.benchlore.store.Library;

/** Writes amounts with the shop's currency, and prices with the day they were known. */
final class Prices {

    private final Library library;

    Prices(Library library) {
        this.library = library;
    }

    /** Returns an amount, an empty text for null. */
    String amount(Amount amount) {
        return amount == null ? "" : (amount + " " + currency()).trim();
    }

    /** Returns a price and its day, an empty text for null. A price without a day may be an old one. */
    String price(Amount amount, LocalDate on) {
        return amount == null ? "" : amount(amount) + " (" + (on == null ? "day " + Texts.NOT_RECORDED : on) + ")";
    }

    private String currency() {
        return library.top(Kind.SHOP.word()).filter(Shop.class::isInstance).map(Shop.class::cast)
                .map(Shop::getCurrency).orElse("");
    }
}
