// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;

import org.benchlore.check.Mirror;

/** The mirrors of all rules, for the library that is spoilt once for each. */
public final class Mirrors {

    private Mirrors() {
    }

    /** One mirror a rule. */
    public static List<Mirror> all() {
        return List.of(new FasteningWithoutTorqueTest(), new TighteningWithoutFasteningTest(),
                new StageWithoutValueTest(), new TorqueImplausibleTest(), new TorqueUnusualTest(),
                new ThreadUnreadableTest(), new TorqueOfNobodyTest(), new ComputedTorqueStatedTest(),
                new MakerFigureWithoutDocumentTest(), new SequenceMissingTest(), new OrderIncompleteTest(),
                new AngleBoltUsedAgainTest(), new RenewRuleMissingTest(), new ReuseLengthMissingTest(),
                new TorqueToolMissingTest(), new BoltsNeverTightenedTest(), new WheelNutsNotToldAgainTest(),
                new SignOffMissingTest(), new HazardWithoutConsequenceTest(), new HazardWithoutAvoidanceTest(),
                new HazardWithoutSignalTest(), new TooManyHazardsTest(), new HazardRepeatedTest(),
                new HazardOnEveryPageTest(), new HazardInTextTest(), new HazardAfterStepTest(),
                new SupportTooLateTest(), new SupportMissingTest(), new FrictionDustTest(), new HandsOutTest(),
                new SupplyHazardMissingTest(), new HighVoltageQualificationTest(), new AirbagQualificationTest(),
                new RefrigerantQualificationTest(), new LiftingQualificationTest(), new NobodyQualifiedTest(),
                new MixedStatesTest(), new StateAgainstStepTest(), new ListNotRecordedTest(),
                new ListContradictedTest(), new AccessNeverOpenedTest(), new AccessNeverClosedTest(),
                new AccessLoopTest(), new AccessAgainstItsNeedTest(), new AccessOfAnotherMachineTest(),
                new TeachInMissingTest(), new BleedMissingTest(), new DrainedNeverFilledTest(),
                new RenewedFastenerNotListedTest(), new SingleUsePartMissingTest(), new ToolNotListedTest(),
                new SupplyNotListedTest(), new PartDoesNotFitTest(), new SkillTooLowTest(),
                new MinutesMissingTest(), new MinutesInvertedTest(), new MinutesStaleTest(),
                new ProcedureWithoutStepsTest(), new StepWithoutTextTest(), new StepTooLongTest(),
                new MeasureStepWithoutMeasurementTest(), new MeasurementWithoutLimitsTest(),
                new LimitsInvertedTest(), new LimitsOfTwoKindsTest(), new GaugeOutOfRangeTest(),
                new DecideWithoutOutcomesTest(), new QuestionWithoutAnswersTest(), new OutcomeLeadsNowhereTest(),
                new NotProvedTest(), new ForNoMachineTest(), new ApplicabilityInvertedTest(),
                new ProcedureLoopTest(), new ReviewIncompleteTest(), new ReviewedByAuthorTest(),
                new ChangedSinceReviewTest(), new WithdrawnWithoutReasonTest(),
                new WithdrawnWithoutSuccessorTest(), new WithdrawnReferenceTest(), new HeldWithoutProofTest(),
                new NoteStatusUnfoundedTest(), new NearDuplicateNotesTest(), new CalibrationDueTest(),
                new PriceStaleTest(), new NewerEditionTest(), new SupersededReferenceTest(),
                new SuccessorLoopTest(), new BrokenReferenceTest(), new DuplicateIdTest(), new FileDamagedTest(),
                new FileMisfitTest(), new InventedAmongRealTest(), new SuppressionUnfoundedTest());
    }
}
