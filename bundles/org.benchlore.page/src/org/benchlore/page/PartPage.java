// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;
import java.util.Set;

import org.benchlore.model.Kind;
import org.benchlore.model.LifeData;
import org.benchlore.model.Part;

/** The page of a part: how it is ordered, what it costs, what is in it and where it is used. */
final class PartPage implements KindPage {

    private final Part part;
    private final Scope scope;
    private final Links links;

    PartPage(Part part, Scope scope) {
        this.part = part;
        this.scope = scope;
        this.links = scope.links();
    }

    @Override
    public void write(Sheet sheet) {
        sheet.facts(KindPage.facts(Kind.PART, scope).add(Texts.NUMBER, part.getNumber())
                .add(Texts.MAKER, part.getMaker())
                .always(Texts.PRICE, scope.prices().price(part.getPrice(), part.getPriceOn()))
                .add("Deposit for the old part", scope.prices().amount(part.getDeposit()))
                .add("Comes within", part.getLeadTime()).add("Kept in stock", Labels.of(part.getStocked()))
                .add("Can be returned", Labels.of(part.getReturnable()))
                .add("Never used twice", Labels.of(part.getSingleUse())).add("Life data", life(part.getLife())));
        sheet.paragraph(links.text(part.getText(), part));
        var rows = new Rows("What is in the kit", Texts.PART, Texts.QUANTITY);
        part.getKit().forEach(line -> rows.row(links.to(line.getPart()),
                Spans.of(line.getQuantity() == null ? 1 : line.getQuantity())));
        sheet.table(rows);
        new Ranges(links).write(sheet, part.getApplicability());
        new Holdings(scope).stock(sheet);
        new Referrers(scope).write(sheet, Set.of(Kind.SHOP));
    }

    private static String life(LifeData life) {
        return life == null ? "" : Spans.text(Spans.join(", ", List.of(Spans.of("shape ", life.getShape()),
                Spans.of("scale ", life.getScale()), Spans.of("from ", life.getSource()))));
    }
}
