// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Map;

import org.benchlore.model.BookPackage.Literals;
import org.eclipse.emf.ecore.EClass;

/** Forms of notes and of the plain records. */
final class RecordLayouts {

    private RecordLayouts() {
    }

    static Map<EClass, List<Section>> all() {
        return Map.of(Literals.FIELD_NOTE, note(), Literals.PART, part(), Literals.TOOL, tool(),
                Literals.SUPPLY, supply(), Literals.FAULT_CODE, code(), Literals.DOCUMENT, document(), Literals.GLOSSARY, glossary());
    }

    private static List<Section> note() {
        return List.of(
                Section.of("learned", Literals.FIELD_NOTE__TEXT, Literals.TOP_ELEMENT__TITLE,
                        Literals.FIELD_NOTE__STATUS),
                Section.of("where", Literals.FIELD_NOTE__UNIT, Literals.FIELD_NOTE__MACHINE, Literals.FIELD_NOTE__METER,
                        Literals.FIELD_NOTE__JOB, Literals.FIELD_NOTE__DURING),
                Section.of("signs", Literals.FIELD_NOTE__SYMPTOMS, Literals.FIELD_NOTE__CODES,
                        Literals.FIELD_NOTE__CODES_AS_WRITTEN),
                Section.of("found", Literals.FIELD_NOTE__COMPONENT, Literals.FIELD_NOTE__CAUSE,
                        Literals.FIELD_NOTE__FINDING, Literals.FIELD_NOTE__ACTION, Literals.FIELD_NOTE__VERIFICATION),
                Section.of("often", Literals.FIELD_NOTE__SEEN, Literals.FIELD_NOTE__ADD_WHILE_DOING),
                Section.of("origin", Literals.FIELD_NOTE__DATE, Literals.FIELD_NOTE__AUTHOR,
                        Literals.FIELD_NOTE__DOCUMENTS, Literals.FIELD_NOTE__SUPERSEDED_BY,
                        Literals.FIELD_NOTE__MEDIA));
    }

    private static List<Section> part() {
        return List.of(
                Section.of("", Literals.TOP_ELEMENT__TITLE, Literals.PART__NUMBER, Literals.PART__MAKER,
                        Literals.PART__SINGLE_USE, Literals.PART__SUPERSEDED_BY),
                Section.of("price", Literals.PART__PRICE, Literals.PART__PRICE_ON, Literals.PART__DEPOSIT,
                        Literals.PART__LEAD_TIME, Literals.PART__STOCKED, Literals.PART__RETURNABLE),
                Section.of("fits", Literals.PART__APPLICABILITY, Literals.PART__KIT, Literals.PART__LIFE,
                        Literals.PART__TEXT));
    }

    private static List<Section> tool() {
        return List.of(
                Section.of("", Literals.TOP_ELEMENT__TITLE, Literals.TOOL__NUMBER, Literals.TOOL__SPECIAL,
                        Literals.TOOL__PRICE),
                Section.of("range", Literals.TOOL__RANGE_FROM, Literals.TOOL__RANGE_TO, Literals.TOOL__REACH,
                        Literals.TOOL__CALIBRATED, Literals.TOOL__TEXT));
    }

    private static List<Section> supply() {
        return List.of(
                Section.of("", Literals.TOP_ELEMENT__TITLE, Literals.SUPPLY__NUMBER, Literals.SUPPLY__SPECIFICATION),
                Section.of("price", Literals.SUPPLY__PRICE, Literals.SUPPLY__PRICE_ON, Literals.SUPPLY__PACK),
                Section.of("hazards", Literals.SUPPLY__HAZARDS, Literals.SUPPLY__TEXT));
    }

    private static List<Section> code() {
        return List.of(
                Section.of("", Literals.TOP_ELEMENT__TITLE, Literals.FAULT_CODE__CODE, Literals.FAULT_CODE__SCHEME,
                        Literals.FAULT_CODE__WRITTEN, Literals.FAULT_CODE__DEFINED_BY),
                Section.of("meaning", Literals.FAULT_CODE__MEANING, Literals.FAULT_CODE__CONDITIONS,
                        Literals.FAULT_CODE__MACHINES, Literals.FAULT_CODE__COMPONENTS));
    }

    private static List<Section> document() {
        return List.of(
                Section.of("", Literals.TOP_ELEMENT__TITLE, Literals.DOCUMENT__KIND, Literals.DOCUMENT__ISSUER,
                        Literals.DOCUMENT__NUMBER, Literals.DOCUMENT__EDITION, Literals.DOCUMENT__DATE,
                        Literals.DOCUMENT__KEPT_AT, Literals.DOCUMENT__SUPERSEDED_BY),
                Section.of("says", Literals.DOCUMENT__GIST, Literals.DOCUMENT__SYMPTOMS, Literals.DOCUMENT__CODES,
                        Literals.DOCUMENT__COMPONENTS, Literals.DOCUMENT__APPLICABILITY));
    }

    private static List<Section> glossary() {
        return List.of(Section.of("", Literals.TOP_ELEMENT__TITLE, Literals.GLOSSARY__ENTRIES));
    }
}
