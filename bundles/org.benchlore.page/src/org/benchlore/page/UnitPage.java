// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.model.Kind;
import org.benchlore.model.Unit;

/** The page of a unit: which one it is, its meters, and every job and note on it. */
final class UnitPage implements KindPage {

    private final Unit unit;
    private final Scope scope;

    UnitPage(Unit unit, Scope scope) {
        this.unit = unit;
        this.scope = scope;
    }

    @Override
    public void write(Sheet sheet) {
        sheet.facts(KindPage.facts(Kind.UNIT, scope).add(Texts.MACHINE, scope.links().to(unit.getMachine()))
                .add("Serial number", unit.getSerial()).add("Fleet number", unit.getFleetNumber())
                .add("Variant", unit.getVariant()).add("Built", unit.getBuilt())
                .add("Options", Spans.words(unit.getOptions())).add("Kept until", unit.getKeptUntil())
                .add("A day out of service costs", scope.prices().amount(unit.getDayOut())));
        sheet.paragraph(scope.links().text(unit.getText(), unit));
        var rows = new Rows("Meter readings", Texts.DATE, "Counts", "Reading", Texts.REMARK);
        unit.getMeters().forEach(reading -> rows.row(Spans.of(reading.getDate()),
                Spans.of(Labels.of(reading.getKind())), Spans.of(reading.getValue()),
                Spans.of(reading.isReplaced() ? "meter replaced" : "")));
        sheet.table(rows);
        new Referrers(scope).write(sheet);
    }
}
