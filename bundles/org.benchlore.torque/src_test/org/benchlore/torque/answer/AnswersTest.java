// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.torque.Calculated;
import org.benchlore.torque.Caution;
import org.benchlore.torque.StatedTorque;
import org.benchlore.torque.wrench.Wrench;
import org.benchlore.torque.wrench.WrenchKind;
import org.benchlore.torque.wrench.WrenchRack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class AnswersTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 5, 4);
    private static final WrenchRack RACK = new WrenchRack(List.of(
            new Wrench("Small", WrenchKind.SETTING, StatedTorque.parse("5 N·m"), StatedTorque.parse("25 N·m"),
                    Optional.of(TODAY)),
            new Wrench("Middle", WrenchKind.SETTING, StatedTorque.parse("20 N·m"), StatedTorque.parse("100 N·m"),
                    Optional.of(TODAY.minusDays(1))),
            new Wrench("Worn", WrenchKind.SETTING, StatedTorque.parse("40 N·m"), StatedTorque.parse("200 N·m"),
                    Optional.of(TODAY), true)));

    private static HeadInput head(String thread, String head, String bearing) {
        return new HeadInput(thread, head, bearing);
    }

    private static Answer bolt(String thread, String propertyClass, String friction) {
        return new BoltQuestion(thread, propertyClass, head(friction, "", ""), "").answer();
    }

    private static Answer judge(String torque, String thread, String propertyClass, String... angles) {
        return new JudgeQuestion(torque, List.of(angles), thread, propertyClass, HeadInput.UNKNOWN).answer();
    }

    private static Answer wrench(String torque, String length, String offset, String angle, WrenchRack rack) {
        return new WrenchQuestion(torque, length, offset, angle, Optional.ofNullable(rack), TODAY).answer();
    }

    private static String value(Answer answer, String label) {
        return answer.lines().stream().filter(Answer.Labelled.class::isInstance).map(Answer.Labelled.class::cast)
                .filter(line -> line.label().equals(label)).findFirst().orElseThrow().value();
    }

    private static List<String> phrases(Answer answer, String title) {
        return answer.lines().stream().filter(Answer.Phrases.class::isInstance).map(Answer.Phrases.class::cast)
                .filter(line -> line.title().equals(title)).findFirst().orElseThrow().all();
    }

    private static double number(Answer answer, String name) {
        return (Double) ((Map<?, ?>) answer.data().get(name)).get("value");
    }

    static Stream<Answer> all() {
        return Stream.of(new ConvertQuestion("80 ft-lb", "N·m").answer(), new ConvertQuestion("80 ft-lb", " ").answer(),
                bolt("M10", "8.8", ""), bolt("M10", "8.8", "0.12"), judge("45 N·m", "M10", "8.8"),
                judge("500 N·m", "M10", "8.8"), wrench("80 N·m", "400", "50", "", RACK), wrench("80 N·m", "", "", "", null),
                new SequenceQuestion("circle", "8", "", "").answer());
    }

    @ParameterizedTest
    @MethodSource("all")
    void endsWithTheCautionAndSaysWhatWasAssumed(Answer answer) {
        assertEquals(new Answer.Standing(Caution.CHECK), answer.lines().get(answer.lines().size() - 1));
        assertFalse(phrases(answer, "Assumed:").isEmpty());
        assertEquals(Caution.CHECK, answer.data().get("caution"));
        assertEquals(phrases(answer, "Assumed:"), answer.data().get("assumptions"));
    }

    @Test
    void withoutAUnitWantedATorqueIsShownInEveryOther() {
        var answer = new ConvertQuestion("75 lbf·ft", "").answer();
        assertEquals("101.7 N·m", value(answer, "N·m"));
        assertEquals("900 lbf·in", value(answer, "lbf·in"));
        assertEquals(ConvertQuestion.units().size() - 1,
                answer.lines().stream().filter(Answer.Labelled.class::isInstance).count());
    }

    /** VDI 2230-1 (from memory) reckons with the least friction, which gives the most preload. */
    @Test
    void withoutFrictionTheLeastIsReckonedWith() {
        var answer = bolt("M10", "8.8", "");
        assertEquals(number(bolt("M10", "8.8", "0.08"), "torque"), number(answer, "torque"), 1e-12);
        assertEquals(number(bolt("M10", "8.8", "0.12"), "torque"), number(answer, "torqueAtFriction0.12"), 1e-12);
        assertEquals(number(bolt("M10", "8.8", "0.16"), "torque"), number(answer, "torqueAtFriction0.16"), 1e-12);
        assertTrue((double) answer.data().get("shareOfYieldAtFriction0.16") < 0.9);
        assertTrue(phrases(answer, "Assumed:").get(0).startsWith("friction 0.08 reckoned with, since none was given"));
        assertTrue(value(answer, "If friction is 0.12").endsWith("only where this friction is known"));
        assertEquals("friction 0.12, as given", phrases(bolt("M10", "8.8", "0.12"), "Assumed:").get(0));
    }

    @Test
    void everyCalculatedValueOfABoltCarriesItsMark() {
        var answer = bolt("M12", "8.8", "");
        for (var label : List.of("Torque", "Preload", "Scatter", "If friction is 0.12", "If friction is 0.16")) {
            assertTrue(value(answer, label).contains(Calculated.MARK), label);
        }
        assertEquals(0.9, answer.data().get("use"));
        assertEquals("1.75 mm; pitch diameter 10.863 mm, minor diameter 9.853 mm", value(answer, "Pitch"));
        assertEquals("84.3 mm²", value(answer, "Stress area"));
    }

    @Test
    void frictionUnderTheHeadIsTheSameUnlessGiven() {
        var both = new BoltQuestion("M10", "8.8", head("0.12", "0.12", ""), "0.9").answer();
        assertEquals(number(bolt("M10", "8.8", "0.12"), "torque"), number(both, "torque"), 1e-12);
        var apart = new BoltQuestion("M10", "8.8", head("0.12", "0.10", "20,11"), "0.5").answer();
        assertEquals(0.12, apart.data().get("friction"));
        assertEquals(0.10, apart.data().get("headFriction"));
        assertEquals(0.5, apart.data().get("use"));
        assertTrue(phrases(apart, "Assumed:").get(1).contains("20 mm over a hole of 11 mm, as given"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"45 N·m|true|MAIN", "60 N·m|false|STOP", "20 N·m|false|STOP"})
    void aVerdictThatIsNotUsualIsMarked(String torque, boolean good, Answer.Weight weight) {
        var answer = judge(torque, "M10", "8.8");
        assertEquals(good, answer.good());
        assertTrue(answer.lines().stream().anyMatch(line -> line instanceof Answer.Labelled labelled
                && labelled.label().equals("Verdict") && labelled.weight() == weight));
    }

    @Test
    void anAngleIsNeverMadeATorque() {
        var answer = judge("20 N·m", "M10", "8.8", "90", "90 °");
        assertTrue(value(answer, "Verdict").startsWith("20 N·m before the angle: "), value(answer, "Verdict"));
        assertTrue(phrases(answer, "Not judged:").get(0).startsWith("what the angle adds"));
        assertEquals(true, answer.data().get("snug"));
    }

    @Test
    void aWrenchWithoutAnAdapterIsSetToTheStatedTorque() {
        var answer = wrench("15 N·m", "", "", "", RACK);
        assertEquals("15 N·m, as stated: no adapter", value(answer, "Set the wrench to"));
        assertTrue(answer.good());
        assertEquals(1.0, answer.data().get("factor"));
        assertEquals("Small: fits, within ± 4 %, calibrated until 2026-05-04.", phrases(answer, "The shop's wrenches:").get(0));
    }

    /** 100 N·m, 300 and 50 mm: in line 85.714, folded back 120 (computed). */
    @ParameterizedTest
    @CsvSource({"'', 85.714", "0, 85.714", "90, 100", "180, 120"})
    void theAdaptersAngleIsInLineUnlessGiven(String angle, double setting) {
        var answer = wrench("100 N·m", "300", "50", angle, null);
        assertEquals(setting, number(answer, "setting"), 5e-4);
        assertTrue(answer.good());
        assertFalse(answer.data().containsKey("choices"));
    }

    @Test
    void aWrenchThatIsOverdueOrUsedUpDoesNotFit() {
        var answer = wrench("80 N·m", "", "", "", RACK);
        assertFalse(answer.good());
        assertEquals(List.of("CALIBRATION_OVER", "USED_UP", "ABOVE_HIGHEST"), ((List<?>) answer.data().get("choices"))
                .stream().map(choice -> ((Map<?, ?>) choice).get("fit")).toList());
        assertTrue(phrases(answer, "The shop's wrenches:").get(1).contains("used too often since its calibration"));
        assertEquals("2026-05-03", ((Map<?, ?>) ((List<?>) answer.data().get("choices")).get(0)).get("calibrationDue"));
    }

    @Test
    void aShopWithoutWrenchesIsSaidToHaveNone() {
        var answer = wrench("80 N·m", "", "", "", new WrenchRack(List.of()));
        assertEquals(List.of("none with a range of torque is recorded"), phrases(answer, "The shop's wrenches:"));
        assertFalse(answer.good());
    }

    @Test
    void aSequenceGivesTheTorqueOfEachStage() {
        var question = new SequenceQuestion("grid", "2x3", "50,100", "90 N·m");
        var answer = question.answer();
        assertEquals("2 5 1 6 4 3", value(answer, "Order"));
        assertEquals("3 4 6 1 5 2", value(answer, "Loosening"));
        assertEquals(2, ((List<?>) answer.data().get("stageTorques")).size());
        assertTrue(answer.lines().stream().anyMatch(line -> line instanceof Answer.Labelled labelled
                && labelled.value().startsWith("45 N·m = 33.2 lbf·ft (" + Calculated.MARK)));
        assertEquals(List.of(50, 100), question.stageList().percents());
        assertEquals(List.of(30, 70, 100), new SequenceQuestion("circle", "8", null, null).stageList().percents());
        assertEquals(List.of(3, 1, 2), new SequenceQuestion("own", "3 1 2", "", "").sequence().order());
    }

    private static Field wrong(Runnable question) {
        var wrong = assertThrows(WrongInput.class, question::run);
        assertTrue(wrong.getMessage().matches("[^\\p{Cntrl}]{20,}\\."), wrong.getMessage());
        return wrong.field();
    }

    @Test
    void whatIsWrongIsSaidBesideTheInputThatIsWrong() {
        assertEquals(Field.TORQUE, wrong(() -> new ConvertQuestion("80", "N·m").answer()));
        assertEquals(Field.TO_UNIT, wrong(() -> new ConvertQuestion("80 N·m", "mm").answer()));
        assertEquals(Field.THREAD, wrong(() -> bolt("M13", "8.8", "")));
        assertEquals(Field.THREAD, wrong(() -> bolt("", "8.8", "")));
        assertEquals(Field.CLASS, wrong(() -> bolt("M10", "", "")));
        assertEquals(Field.CLASS, wrong(() -> bolt("M10", "88", "")));
        assertEquals(Field.CLASS, wrong(() -> bolt("M10-8.8", "10.9", "")));
        assertEquals(Field.CLASS, wrong(() -> bolt("M10", "grade 8", "")));
        assertEquals(Field.FRICTION, wrong(() -> bolt("M10", "8.8", "12")));
        assertEquals(Field.FRICTION, wrong(() -> bolt("M10", "A2-70", "")));
        assertEquals(Field.FRICTION, wrong(() -> new BoltQuestion("M10", "8.8", head("", "0.1", ""), "").answer()));
        assertEquals(Field.FRICTION, wrong(() -> new BoltQuestion("M10", "8.8", head("x", "0.1", ""), "").answer()));
        assertEquals(Field.HEAD_FRICTION, wrong(() -> new BoltQuestion("M10", "8.8", head("0.1", "1", ""), "").answer()));
        assertEquals(Field.BEARING, wrong(() -> new BoltQuestion("M10", "8.8", head("", "", "11,14"), "").answer()));
        assertEquals(Field.USE, wrong(() -> new BoltQuestion("M10", "8.8", HeadInput.UNKNOWN, "90").answer()));
        assertEquals(Field.TORQUE, wrong(() -> judge("45 Nx", "M10", "8.8")));
        assertEquals(Field.ANGLES, wrong(() -> judge("45 N·m", "M10", "8.8", "right")));
    }

    @Test
    void whatIsWrongWithAWrenchOrASequenceIsSaidThereToo() {
        assertEquals(Field.LENGTH, wrong(() -> wrench("80 N·m", "", "50", "", null)));
        assertEquals(Field.LENGTH, wrong(() -> wrench("80 N·m", "40cm", "50", "", null)));
        assertEquals(Field.OFFSET, wrong(() -> wrench("80 N·m", "400", "", "", null)));
        assertEquals(Field.OFFSET, wrong(() -> wrench("80 N·m", "400", "390", "180", null)));
        assertEquals(Field.ADAPTER_ANGLE, wrong(() -> wrench("80 N·m", "400", "50", "square", null)));
        assertEquals(Field.LENGTH, wrong(() -> wrench("80 N·m", "", "", "90", null)));
        assertEquals(Field.LAYOUT, wrong(() -> new SequenceQuestion("star", "5", "", "").answer()));
        assertEquals(Field.SIZE, wrong(() -> new SequenceQuestion("circle", "2", "", "").answer()));
        assertEquals(Field.STAGES, wrong(() -> new SequenceQuestion("circle", "8", "30,70", "").answer()));
        assertEquals(Field.TORQUE, wrong(() -> new SequenceQuestion("circle", "8", "", "ninety").answer()));
    }
}
