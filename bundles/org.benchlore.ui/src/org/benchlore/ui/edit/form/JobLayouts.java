// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Map;

import org.benchlore.model.BookPackage.Literals;
import org.eclipse.emf.ecore.EClass;

/** Forms of job records and of the shop. */
final class JobLayouts {

    private JobLayouts() {
    }

    static Map<EClass, List<Section>> all() {
        return Map.of(Literals.JOB_RECORD, job(), Literals.ROUND, round(), Literals.DONE_WORK, done(),
                Literals.TIGHTENED, tightened(), Literals.LEFT_IN_PLACE, left(), Literals.SHOP, shop());
    }

    private static List<Section> job() {
        return List.of(
                Section.of("arrival", Literals.TOP_ELEMENT__TITLE, Literals.JOB_RECORD__UNIT, Literals.JOB_RECORD__COMPLAINT,
                        Literals.JOB_RECORD__OPENED, Literals.JOB_RECORD__METER, Literals.JOB_RECORD__CODES_ON_ARRIVAL,
                        Literals.JOB_RECORD__CODES_AS_WRITTEN),
                Section.of("saved", Literals.JOB_RECORD__SAVED),
                Section.of("rounds", Literals.JOB_RECORD__ROUNDS),
                Section.of("leftIn", Literals.JOB_RECORD__LEFT),
                Section.of("offers", Literals.JOB_RECORD__OFFERS),
                Section.of("ended", Literals.JOB_RECORD__VERIFICATION, Literals.JOB_RECORD__FINDING,
                        Literals.JOB_RECORD__FAILED, Literals.JOB_RECORD__CAUSE, Literals.JOB_RECORD__STATE,
                        Literals.JOB_RECORD__CLOSED, Literals.JOB_RECORD__MEDIA),
                Section.of("comeback", Literals.JOB_RECORD__COMEBACK_OF, Literals.JOB_RECORD__COMEBACK_REASON));
    }

    private static List<Section> round() {
        return List.of(
                Section.of("", Literals.ROUND__KIND, Literals.ROUND__DATE, Literals.ROUND__TEXT, Literals.ROUND__PLANNED),
                Section.of("removed", Literals.ROUND__REMOVED),
                Section.of("noted", Literals.ROUND__DONE, Literals.ROUND__OPENED, Literals.ROUND__MEASURED,
                        Literals.ROUND__TIGHTENED));
    }

    private static List<Section> done() {
        return List.of(Section.of("", Literals.DONE_WORK__PROCEDURE, Literals.DONE_WORK__WAY, Literals.DONE_WORK__OPENED,
                Literals.DONE_WORK__CLOSED, Literals.DONE_WORK__MINUTES, Literals.DONE_WORK__PEOPLE, Literals.DONE_WORK__BY,
                Literals.DONE_WORK__RENEWED, Literals.DONE_WORK__FITTED));
    }

    private static List<Section> tightened() {
        return List.of(Section.of("", Literals.TIGHTENED__FASTENING, Literals.TIGHTENED__TORQUE, Literals.TIGHTENED__ANGLE,
                Literals.TIGHTENED__TOOL, Literals.TIGHTENED__HOLDING, Literals.TIGHTENED__BY));
    }

    private static List<Section> left() {
        return List.of(Section.of("", Literals.LEFT_IN_PLACE__COMPONENT, Literals.LEFT_IN_PLACE__PART,
                Literals.LEFT_IN_PLACE__TEXT, Literals.LEFT_IN_PLACE__CONFIRMED_BY));
    }

    private static List<Section> shop() {
        return List.of(
                Section.of("", Literals.TOP_ELEMENT__TITLE, Literals.SHOP__CURRENCY, Literals.SHOP__TAX_PERCENT,
                        Literals.SHOP__ROUNDING, Literals.SHOP__RATES),
                Section.of("counting", Literals.SHOP__COMEBACK_COST, Literals.SHOP__FOLLOW_MONTHS, Literals.SHOP__PRIOR_WORTH,
                        Literals.SHOP__FAMILY_WEIGHT, Literals.SHOP__SURE_PERCENT, Literals.SHOP__RENEW_TROUBLE_PERCENT,
                        Literals.SHOP__WEIGHTS),
                Section.of("people", Literals.SHOP__PEOPLE),
                Section.of("sites", Literals.SHOP__SITES, Literals.SHOP__CALIBRATION_MONTHS, Literals.SHOP__CALIBRATION_USES),
                Section.of("silenced", Literals.SHOP__SUPPRESSIONS));
    }
}
