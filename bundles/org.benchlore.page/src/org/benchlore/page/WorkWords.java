// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static java.util.Map.entry;

import java.util.Map;

import org.benchlore.model.FluidWay;
import org.benchlore.model.Friction;
import org.benchlore.model.MachineState;
import org.benchlore.model.PartNeed;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Qualification;
import org.benchlore.model.Recorded;
import org.benchlore.model.RenewRule;
import org.benchlore.model.SequencePattern;
import org.benchlore.model.Signal;
import org.benchlore.model.Skill;
import org.benchlore.model.StageKind;
import org.benchlore.model.StatedBy;
import org.benchlore.model.Status;
import org.benchlore.model.StepKind;
import org.benchlore.model.UnattendedKind;
import org.benchlore.model.VerificationKind;
import org.benchlore.model.YesNo;
import org.eclipse.emf.common.util.Enumerator;

/** Words for the literals of procedures and of work. */
final class WorkWords {

    static final Map<Enumerator, String> WORDS = Map.ofEntries(
            entry(Recorded.NONE, Texts.NONE),
            entry(Recorded.LISTED, "listed"),
            entry(YesNo.NO, "no"),
            entry(YesNo.YES, "yes"),
            entry(Status.DRAFT, "draft"),
            entry(Status.REVIEWED, "reviewed"),
            entry(Status.WITHDRAWN, "withdrawn"),
            entry(ProcedureKind.RENEW, "renew"),
            entry(ProcedureKind.INSPECT, "inspect"),
            entry(ProcedureKind.TEST, "test"),
            entry(ProcedureKind.ADJUST, "adjust"),
            entry(ProcedureKind.TEACH_IN, "teach-in"),
            entry(ProcedureKind.DIAGNOSE, "diagnose"),
            entry(ProcedureKind.SERVICE, "service"),
            entry(ProcedureKind.OVERHAUL, "overhaul"),
            entry(StepKind.DO, "do"),
            entry(StepKind.MARK, "mark"),
            entry(StepKind.CLEAN, "clean"),
            entry(StepKind.INSPECT, "inspect"),
            entry(StepKind.MEASURE, "measure"),
            entry(StepKind.DECIDE, "decide"),
            entry(Skill.APPRENTICE, "apprentice"),
            entry(Skill.TECHNICIAN, "technician"),
            entry(Skill.SENIOR, "senior technician"),
            entry(Skill.SPECIALIST, "specialist"),
            entry(Qualification.NONE, Texts.NONE),
            entry(Qualification.HIGH_VOLTAGE, "high voltage"),
            entry(Qualification.AIRBAG, "airbags and belt tensioners"),
            entry(Qualification.REFRIGERANT, "refrigerant"),
            entry(Qualification.GAS, "gas"),
            entry(Qualification.PRESSURE_EQUIPMENT, "pressure equipment"),
            entry(Qualification.LIFTING, "lifting"),
            entry(Qualification.WELDING, "welding"),
            entry(Qualification.OTHER, "another qualification"),
            entry(MachineState.BATTERY_OFF, "battery off"),
            entry(MachineState.BATTERY_ON, "battery on"),
            entry(MachineState.BATTERY_ON_SUPPORT, "battery on support"),
            entry(MachineState.HOT, "hot"),
            entry(MachineState.COLD, "cold"),
            entry(MachineState.PRESSURE_RELIEVED, "pressure relieved"),
            entry(MachineState.UNDER_PRESSURE, "under pressure"),
            entry(MachineState.DRAINED, "drained"),
            entry(MachineState.FILLED, "filled"),
            entry(MachineState.RAISED, "raised"),
            entry(MachineState.ON_WHEELS, "on its wheels"),
            entry(MachineState.RUNNING, "running"),
            entry(MachineState.STOPPED, "stopped"),
            entry(Signal.DANGER, "DANGER"),
            entry(Signal.WARNING, "WARNING"),
            entry(Signal.CAUTION, "CAUTION"),
            entry(Signal.NOTICE, "NOTICE"),
            entry(StageKind.TORQUE, "tighten"),
            entry(StageKind.ANGLE, "turn on by an angle"),
            entry(StageKind.LOOSEN, "loosen"),
            entry(StageKind.WAIT, "wait"),
            entry(SequencePattern.ANY_ORDER, "in any order"),
            entry(SequencePattern.CIRCLE, "in a circle"),
            entry(SequencePattern.RECTANGLE, "in a rectangle"),
            entry(SequencePattern.ROW, "in a row"),
            entry(SequencePattern.OWN_ORDER, "in an order of its own"),
            entry(RenewRule.REUSE, "used again"),
            entry(RenewRule.RENEW, "renew every time"),
            entry(RenewRule.REUSE_WITHIN_LENGTH, "used again only within its length"),
            entry(Friction.DRY, "dry"),
            entry(Friction.OILED, "oiled"),
            entry(Friction.GREASED, "greased"),
            entry(Friction.ASSEMBLY_PASTE, "with assembly paste"),
            entry(Friction.THREADLOCK, "with threadlock"),
            entry(Friction.COATED, "coated"),
            entry(StatedBy.MAKER, "the maker"),
            entry(StatedBy.SHOP, "the shop"),
            entry(StatedBy.CALCULATED, "calculated, not the maker's"),
            entry(PartNeed.ALWAYS, "always"),
            entry(PartNeed.IF_FOUND, "if found bad"),
            entry(FluidWay.IN, "filled in"),
            entry(FluidWay.OUT, "let out"),
            entry(FluidWay.ONTO, "put on"),
            entry(VerificationKind.TRIAL_RUN, "trial run"),
            entry(VerificationKind.COLD_START, "cold start"),
            entry(VerificationKind.CODES_READ_AGAIN, "codes read again"),
            entry(VerificationKind.PRESSURE_HOLD, "pressure held"),
            entry(VerificationKind.OTHER, "another proof"),
            entry(UnattendedKind.COOL, "cools down"),
            entry(UnattendedKind.CURE, "cures"),
            entry(UnattendedKind.SOAK, "stands"),
            entry(UnattendedKind.DRAIN, "drains"),
            entry(UnattendedKind.CHARGE, "charges"),
            entry(UnattendedKind.OTHER, "waits"));

    private WorkWords() {
    }
}
