// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.model.Shop;
import org.benchlore.model.Site;
import org.benchlore.model.StockLine;
import org.benchlore.model.ToolHolding;
import org.eclipse.emf.ecore.EObject;

/** Writes where in the shop a tool hangs and a part or a supply lies. */
final class Holdings {

    private final Scope scope;
    private final Links links;

    Holdings(Scope scope) {
        this.scope = scope;
        this.links = scope.links();
    }

    void tools(Sheet sheet) {
        var rows = new Rows("Where it is", "Site", Texts.PLACE, "Own number", "Calibrated on", "Due again",
                "Uses since");
        sites().forEach(site -> site.getTools().stream().filter(it -> isOwn(it.getTool()))
                .forEach(it -> tool(rows, site, it)));
        sheet.table(rows);
    }

    private static void tool(Rows rows, Site site, ToolHolding it) {
        rows.row(Spans.of(Names.of(site)), Spans.of(it.getPlace()), Spans.of(it.getSerial()),
                Spans.of(it.getCalibratedOn()), Spans.of(it.getCalibrationDue()), Spans.of(it.getUses()));
    }

    void stock(Sheet sheet) {
        var rows = new Rows("In stock", "Site", Texts.PLACE, Texts.QUANTITY, "Counted on");
        sites().forEach(site -> site.getStock().stream().filter(this::isOwn).forEach(line -> rows.row(
                Spans.of(Names.of(site)), Spans.of(line.getPlace()), Spans.of(line.getQuantity()),
                Spans.of(line.getCountedOn()))));
        sheet.table(rows);
    }

    private boolean isOwn(StockLine line) {
        return isOwn(line.getPart()) || isOwn(line.getSupply());
    }

    private boolean isOwn(EObject reference) {
        return reference != null && links.address(reference).isPresent()
                && links.address(reference).equals(links.address(scope.own()));
    }

    private Stream<Site> sites() {
        return scope.library().top(Kind.SHOP.word()).filter(Shop.class::isInstance).map(Shop.class::cast).stream()
                .flatMap(shop -> shop.getSites().stream());
    }
}
