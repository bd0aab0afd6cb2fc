// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.benchlore.check.Rule;
import org.benchlore.check.words.TradeWords;

/** Every rule, in the order in which they are written down. */
public final class Rules {

    /**
     * Rules that belong together.
     *
     * @param title what they are about
     * @param rules the rules
     */
    public record Chapter(String title, List<Rule> rules) {
    }

    private final List<Chapter> chapters;

    /**
     * Makes the rules.
     *
     * @param words what texts are matched by
     * @param today the day by which dates are judged
     */
    public Rules(TradeWords words, LocalDate today) {
        var all = new ArrayList<Chapter>(List.of(new Chapter("Tightening", tightening(words)), new Chapter("Hazards", hazards(words)),
                new Chapter("Works and accesses", works(words, today)), new Chapter("Steps and procedures", steps())));
        var known = all.stream().flatMap(chapter -> chapter.rules().stream()).map(Rule::id).collect(Collectors.toSet());
        records(Set.of(), today).forEach(rule -> known.add(rule.id()));
        all.add(new Chapter("Reviews, notes and references", records(Set.copyOf(known), today)));
        chapters = List.copyOf(all);
    }

    /** The rules by what they are about. */
    public List<Chapter> chapters() {
        return chapters;
    }

    /** All rules. */
    public List<Rule> all() {
        return chapters.stream().flatMap(chapter -> chapter.rules().stream()).toList();
    }

    private static List<Rule> tightening(TradeWords words) {
        var known = new Judgement.Known();
        return List.of(new FasteningWithoutTorque(), new TighteningWithoutFastening(), new StageWithoutValue(),
                new TorqueImplausible(known), new TorqueUnusual(known), new ThreadUnreadable(known), new TorqueOfNobody(),
                new ComputedTorqueStated(), new MakerFigureWithoutDocument(), new SequenceMissing(),
                new OrderIncomplete(), new AngleBoltUsedAgain(), new RenewRuleMissing(),
                new ReuseLengthMissing(), new TorqueToolMissing(), new BoltsNeverTightened(words),
                new WheelNutsNotToldAgain(words), new SignOffMissing());
    }

    private static List<Rule> hazards(TradeWords words) {
        return List.of(new HazardWithoutConsequence(), new HazardWithoutAvoidance(), new HazardWithoutSignal(),
                new TooManyHazards(), new HazardRepeated(), new HazardOnEveryPage(), new HazardInText(),
                new HazardAfterStep(words), new SupportTooLate(words), new SupportMissing(words),
                new FrictionDust(words), new HandsOut(words), new SupplyHazardMissing(),
                new HighVoltageQualification(), new AirbagQualification(), new RefrigerantQualification(),
                new LiftingQualification(), new NobodyQualified());
    }

    private static List<Rule> works(TradeWords words, LocalDate today) {
        return List.of(new MixedStates(), new StateAgainstStep(words), new ListNotRecorded(), new ListContradicted(),
                new AccessNeverOpened(), new AccessNeverClosed(), new AccessLoop(), new AccessAgainstItsNeed(),
                new AccessOfAnotherMachine(), new TeachInMissing(words), new BleedMissing(words),
                new DrainedNeverFilled(), new RenewedFastenerNotListed(), new SingleUsePartMissing(),
                new ToolNotListed(), new SupplyNotListed(), new PartDoesNotFit(), new SkillTooLow(),
                new MinutesMissing(), new MinutesInverted(), new MinutesStale(today));
    }

    private static List<Rule> steps() {
        return List.of(new ProcedureWithoutSteps(), new StepWithoutText(), new StepTooLong(),
                new MeasureStepWithoutMeasurement(), new MeasurementWithoutLimits(), new LimitsInverted(),
                new LimitsOfTwoKinds(), new GaugeOutOfRange(), new DecideWithoutOutcomes(), new QuestionWithoutAnswers(),
                new OutcomeLeadsNowhere(), new NotProved(), new ForNoMachine(), new ApplicabilityInverted(),
                new ProcedureLoop());
    }

    private static List<Rule> records(Set<String> known, LocalDate today) {
        return List.of(new ReviewIncomplete(), new ReviewedByAuthor(), new ChangedSinceReview(),
                new WithdrawnWithoutReason(), new WithdrawnWithoutSuccessor(), new WithdrawnReference(),
                new HeldWithoutProof(), new NoteStatusUnfounded(), new NearDuplicateNotes(),
                new CalibrationDue(), new PriceStale(today), new NewerEdition(), new SupersededReference(),
                new SuccessorLoop(), new BrokenReference(), new DuplicateId(), new FileDamaged(),
                new FileMisfit(), new InventedAmongReal(), new SuppressionUnfounded(known));
    }
}
