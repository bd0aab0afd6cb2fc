// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Map;

import org.benchlore.model.BookPackage.Literals;
import org.eclipse.emf.ecore.EClass;

/** Forms of machines and of what is in them, and of units. Components, causes, accesses and chains stand in the outline. */
final class MachineLayouts {

    private MachineLayouts() {
    }

    static Map<EClass, List<Section>> all() {
        return Map.of(Literals.MACHINE, machine(), Literals.FUNCTION, chain(), Literals.COMPONENT, component(),
                Literals.CAUSE, cause(), Literals.ACCESS, access(), Literals.UNIT, unit(),
                Literals.METER_READING, meterReading());
    }

    private static List<Section> machine() {
        return List.of(
                Section.of("", Literals.TOP_ELEMENT__TITLE, Literals.MACHINE__MAKER, Literals.MACHINE__MODEL,
                        Literals.MACHINE__FAMILY, Literals.MACHINE__SUMMARY),
                Section.of("built", Literals.MACHINE__VARIANTS, Literals.MACHINE__YEAR_FROM,
                        Literals.MACHINE__YEAR_TO, Literals.MACHINE__SERIAL_FROM, Literals.MACHINE__SERIAL_TO,
                        Literals.MACHINE__VALUE_NOW, Literals.MACHINE__MEDIA));
    }

    private static List<Section> chain() {
        return List.of(Section.of("", Literals.TITLED__TITLE, Literals.FUNCTION__TEXT));
    }

    private static List<Section> component() {
        return List.of(
                Section.of("", Literals.TITLED__TITLE, Literals.COMPONENT__NAMES, Literals.COMPONENT__SAFETY_CRITICAL),
                Section.of("within", Literals.COMPONENT__FUNCTIONS, Literals.COMPONENT__RUINS, Literals.COMPONENT__RUINS_PERCENT,
                        Literals.COMPONENT__PARTS));
    }

    private static List<Section> cause() {
        return List.of(
                Section.of("", Literals.TITLED__TITLE, Literals.CAUSE__MODE, Literals.CAUSE__FREQUENCY,
                        Literals.CAUSE__CAUSED_BY),
                Section.of("signs", Literals.CAUSE__SYMPTOMS, Literals.CAUSE__CODES),
                Section.of("proved", Literals.CAUSE__CHECK, Literals.CAUSE__CHECK_TEXT, Literals.CAUSE__CHECK_FINDS,
                        Literals.CAUSE__CHECK_BLAMES));
    }

    private static List<Section> access() {
        return List.of(
                Section.of("", Literals.TITLED__TITLE, Literals.ACCESS__COMPONENT),
                Section.of("hours", Literals.ACCESS__STRIP, Literals.ACCESS__REFIT),
                Section.of("open", Literals.ACCESS__NEEDS, Literals.ACCESS__COVERS, Literals.ACCESS__NOT_WITH,
                        Literals.ACCESS__NOT_WITH_WHY),
                Section.of("closed", Literals.ACCESS__AFTER_CLOSING));
    }

    /** What an access shows of its strip and its refit; the rest of them has a form of its own. */
    static List<Section> times() {
        return List.of(Section.of("", Literals.WORK__MINUTES_USUAL, Literals.WORK__MINUTES_BAD, Literals.WORK__PEOPLE));
    }

    private static List<Section> unit() {
        return List.of(
                Section.of("", Literals.TOP_ELEMENT__TITLE, Literals.UNIT__MACHINE, Literals.UNIT__VARIANT,
                        Literals.UNIT__FLEET_NUMBER, Literals.UNIT__SERIAL),
                Section.of("meters", Literals.UNIT__METERS),
                Section.of("kept", Literals.UNIT__BUILT, Literals.UNIT__KEPT_UNTIL, Literals.UNIT__DAY_OUT, Literals.UNIT__OPTIONS,
                        Literals.UNIT__TEXT));
    }

    private static List<Section> meterReading() {
        return List.of(Section.of("", Literals.METER_READING__KIND, Literals.METER_READING__VALUE,
                Literals.METER_READING__DATE, Literals.METER_READING__REPLACED));
    }
}
