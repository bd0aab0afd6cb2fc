// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Map;

import org.benchlore.model.BookPackage.Literals;
import org.eclipse.emf.ecore.EClass;

/** Forms of procedures and of what is in them. Ways and steps stand in the outline. */
final class WorkLayouts {

    private WorkLayouts() {
    }

    static Map<EClass, List<Section>> all() {
        return Map.of(Literals.PROCEDURE, procedure(), Literals.WAY, way(), Literals.WORK, work(),
                Literals.STEP, step(), Literals.HAZARD, hazard(), Literals.FASTENING, fastening(),
                Literals.MEASUREMENT, measurement(), Literals.STAGE, stage(), Literals.PART_USE, partUse());
    }

    private static List<Section> procedure() {
        return List.of(
                Section.of("", Literals.TOP_ELEMENT__TITLE, Literals.PROCEDURE__KIND, Literals.PROCEDURE__SUMMARY),
                Section.of("use", Literals.PROCEDURE__APPLICABILITY, Literals.PROCEDURE__COMPONENT,
                        Literals.PROCEDURE__SYMPTOMS, Literals.PROCEDURE__CODES),
                Section.of("who", Literals.PROCEDURE__SKILL, Literals.PROCEDURE__WHOLE_JOB_USUAL,
                        Literals.PROCEDURE__WHOLE_JOB_BAD),
                Section.of("around", Literals.PROCEDURE__BEFORE, Literals.PROCEDURE__INCLUDES,
                        Literals.PROCEDURE__AFTER_CLOSING),
                Section.of("proof", Literals.PROCEDURE__CLOSING_CONDITIONS, Literals.PROCEDURE__VERIFICATIONS),
                Section.of("review", Literals.PROCEDURE__STATUS, Literals.PROCEDURE__REVISION,
                        Literals.PROCEDURE__AUTHOR,
                        Literals.PROCEDURE__REVIEWER, Literals.PROCEDURE__REVIEWED_ON,
                        Literals.PROCEDURE__WITHDRAWN_REASON, Literals.PROCEDURE__REPLACED_BY),
                Section.of("origin", Literals.PROCEDURE__SOURCES, Literals.PROCEDURE__MEDIA));
    }

    private static List<Section> way() {
        return List.of(Section.of("", Literals.TITLED__TITLE, Literals.WAY__NEEDS, Literals.WAY__WORK));
    }

    private static List<Section> work() {
        return List.of(
                Section.of("time", Literals.WORK__MINUTES_USUAL, Literals.WORK__MINUTES_BAD,
                        Literals.WORK__MINUTES_CHECKED_ON, Literals.WORK__PEOPLE, Literals.WORK__SKILL,
                        Literals.WORK__QUALIFICATIONS, Literals.WORK__UNATTENDED),
                Section.of("safety", Literals.WORK__HAZARDS, Literals.WORK__CONDITIONS, Literals.WORK__STATES),
                Section.of("needed", Literals.WORK__PARTS, Literals.WORK__TOOLS, Literals.WORK__SUPPLIES));
    }

    private static List<Section> step() {
        return List.of(
                Section.of("", Literals.STEP__TEXT, Literals.STEP__KIND, Literals.STEP__WHY, Literals.STEP__SIGN_OFF),
                Section.of("safety", Literals.STEP__HAZARDS),
                Section.of("figures", Literals.STEP__FASTENINGS, Literals.STEP__MEASUREMENTS),
                Section.of("after", Literals.STEP__OUTCOMES, Literals.STEP__MEDIA));
    }

    private static List<Section> hazard() {
        return List.of(Section.of("", Literals.HAZARD__SIGNAL, Literals.HAZARD__KIND, Literals.HAZARD__CONSEQUENCE,
                Literals.HAZARD__AVOIDANCE));
    }

    private static List<Section> fastening() {
        return List.of(Section.of("", Literals.FASTENING__PLACE, Literals.FASTENING__COUNT, Literals.FASTENING__THREAD,
                Literals.FASTENING__PROPERTY_CLASS, Literals.FASTENING__STAGES, Literals.FASTENING__STATED_BY,
                Literals.FASTENING__RENEW, Literals.FASTENING__MAX_LENGTH, Literals.FASTENING__FRICTION,
                Literals.FASTENING__PATTERN, Literals.FASTENING__ORDER, Literals.FASTENING__PART,
                Literals.FASTENING__SOURCE));
    }

    private static List<Section> stage() {
        return List.of(Section.of("", Literals.STAGE__TORQUE, Literals.STAGE__ANGLE, Literals.STAGE__KIND,
                Literals.STAGE__WAIT, Literals.STAGE__TEXT));
    }

    private static List<Section> partUse() {
        return List.of(Section.of("", Literals.PART_USE__PART, Literals.PART_USE__QUANTITY, Literals.PART_USE__NEED,
                Literals.PART_USE__COMPONENT, Literals.PART_USE__TEXT));
    }

    private static List<Section> measurement() {
        return List.of(Section.of("", Literals.MEASUREMENT__WHAT, Literals.MEASUREMENT__PLACE,
                Literals.MEASUREMENT__NOMINAL, Literals.MEASUREMENT__LOW, Literals.MEASUREMENT__HIGH,
                Literals.MEASUREMENT__WEAR_LIMIT, Literals.MEASUREMENT__TOOL, Literals.MEASUREMENT__STATED_BY,
                Literals.MEASUREMENT__SOURCE));
    }
}
