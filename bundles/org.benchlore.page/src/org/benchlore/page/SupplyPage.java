// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.Set;

import org.benchlore.model.Kind;
import org.benchlore.model.Supply;

/** The page of a supply: its own hazards first, then what it must fulfil, its price and where it is used. */
final class SupplyPage implements KindPage {

    private final Supply supply;
    private final Scope scope;

    SupplyPage(Supply supply, Scope scope) {
        this.supply = supply;
        this.scope = scope;
    }

    @Override
    public void write(Sheet sheet) {
        new Hazards(scope.links()).write(sheet, supply.getHazards());
        sheet.facts(KindPage.facts(Kind.SUPPLY, scope).add("Order number", supply.getNumber())
                .add("Specification", supply.getSpecification()).add("Pack", supply.getPack())
                .always(Texts.PRICE, scope.prices().price(supply.getPrice(), supply.getPriceOn())));
        sheet.paragraph(scope.links().text(supply.getText(), supply));
        new Holdings(scope).stock(sheet);
        new Referrers(scope).write(sheet, Set.of(Kind.SHOP));
    }
}
