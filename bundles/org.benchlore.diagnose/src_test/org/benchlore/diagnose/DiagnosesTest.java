// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import static org.benchlore.diagnose.SmallShop.cause;
import static org.benchlore.diagnose.SmallShop.question;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiagnosesTest {

    private static final double EXACT = 1e-12;
    private static final String DEAD = "Winch does not pull";
    private static final String ON_UNIT = "<unit href=\"../../units/winch-1.xmi#winch-1\"/>";
    private static final String SYMPTOM = "<symptoms>" + DEAD + "</symptoms>";

    @TempDir
    Path folder;
    private SmallShop shop;

    @BeforeEach
    void make() throws Exception {
        shop = new SmallShop(folder);
    }

    private double burnt() throws Exception {
        return cause(shop.ask(DEAD), "motor-burnt").chance();
    }

    private static String tally(int count, int of) {
        return "<seen count=\"" + count + "\" ofAbout=\"" + of + "\" since=\"2021\"/>";
    }

    @ParameterizedTest
    @CsvSource({"HELD, 3, 40", "SEEN, 1, 100", "SEEN, 0, 0", "SUSPECTED, 1, 1000", "UNSORTED, 2, 5", "HELD, 0, 500"})
    void aSupportingNoteNeverLowersItsCause(String status, int count, int of) throws Exception {
        shop.note("first", "motor-burnt", "status=\"SEEN\"", SYMPTOM);
        shop.note("wet", "motor-wet", "status=\"SEEN\"", SYMPTOM + tally(4, 20));
        shop.job("one", "motor-burnt", "opened=\"2026-05-05\"", "");
        var before = burnt();
        shop.note("added", "motor-burnt", "status=\"" + status + "\"", of == 0 ? "" : tally(count, of));
        assertTrue(burnt() >= before - EXACT, before + " fell to " + burnt());
        shop.note("added", "motor-burnt", "status=\"" + status + "\"", SYMPTOM + (of == 0 ? "" : tally(count, of)));
        assertTrue(burnt() >= before - EXACT, before + " fell to " + burnt());
    }

    @ParameterizedTest
    @CsvSource({"RULED_OUT", "SUPERSEDED"})
    void aNoteThatDoesNotSupportChangesNothing(String status) throws Exception {
        var before = burnt();
        shop.note("out", "motor-burnt", "status=\"" + status + "\"", SYMPTOM + tally(9, 10));
        assertEquals(before, burnt(), EXACT);
    }

    @Test
    void aRuledOutNoteIsShownAsWhatItLookedLike() throws Exception {
        shop.note("out", "motor-burnt", "status=\"RULED_OUT\"", SYMPTOM + "<finding>Other motor, same stop.</finding>");
        shop.note("far", "lining-oily", "status=\"RULED_OUT\"", "<symptoms>Load creeps down</symptoms>");
        var out = shop.ask(DEAD).ruledOut();
        assertEquals(1, out.size());
        assertEquals("Motor burnt", out.get(0).suspect().title());
        assertEquals("Other motor, same stop.", out.get(0).finding());
    }

    @Test
    void theMoreANoteIsProvedTheMoreItTies() throws Exception {
        var chances = new java.util.ArrayList<Double>();
        for (var status : List.of("SUSPECTED", "SEEN", "HELD")) {
            shop.note("one", "lining-oily", "status=\"" + status + "\"", SYMPTOM);
            chances.add(cause(shop.ask(DEAD), "lining-oily").chance());
        }
        assertTrue(chances.get(0) < chances.get(1) && chances.get(1) < chances.get(2), chances.toString());
    }

    @Test
    void theOrderOfWhatIsGivenDoesNotMatter() throws Exception {
        var one = shop.ask(question("winch", List.of(DEAD, "Load creeps down"), List.of("W101"), null,
                "motor-wet=no", "lining-oily=yes"));
        var other = shop.ask(question("winch", List.of("Load creeps down", DEAD), List.of("W101"), null,
                "lining-oily=yes", "motor-wet=no"));
        for (var cause : one.causes()) {
            assertEquals(cause.chance(), cause(other, cause.address().id()).chance(), EXACT);
        }
        assertEquals(one.checks().order().stream().map(NextCheck::id).toList(),
                other.checks().order().stream().map(NextCheck::id).toList());
    }

    @Test
    void oneFoundFaultDoesNotExplainAwayAnIndependentOne() throws Exception {
        var before = shop.ask(DEAD, "Load creeps down");
        var after = shop.ask(question("winch", List.of(DEAD, "Load creeps down"), List.of(), null, "motor-burnt=yes"));
        assertTrue(cause(after, "motor-burnt").chance() > 0.7, () -> "" + cause(after, "motor-burnt").chance());
        assertTrue(cause(after, "motor-wet").chance() < cause(before, "motor-wet").chance(), "the same complaint is accounted for");
        assertTrue(cause(after, "lining-oily").chance() >= cause(before, "lining-oily").chance(), "it is not explained away");
        assertEquals(List.of("Lining oily", "Motor burnt"), before.together().stream().map(Named::title).sorted().toList());
    }

    @Test
    void somethingThatStandsInNoBookNeverVanishes() throws Exception {
        shop.note("many", "motor-burnt", "status=\"HELD\"", SYMPTOM + tally(900, 1000));
        var answer = shop.ask(question("winch", List.of(DEAD), List.of("W101"), null, "motor-burnt=yes"));
        assertTrue(answer.elsewhere() > 0.01);
        var none = shop.ask("whistles at night");
        assertTrue(none.elsewhere() > answer.elsewhere());
        assertFalse(none.isKnown());
        assertEquals(List.of("whistles at night"), none.unknown().stream().map(Finding::label).toList());
    }

    @Test
    void jobsGiveTheBase() throws Exception {
        for (int i = 0; i < 20; i++) {
            shop.job("dry-" + i, "motor-wet", "opened=\"2026-0" + (1 + i % 9) + "-05\"", "");
        }
        var answer = shop.ask(DEAD);
        var wet = cause(answer, "motor-wet").counted();
        var burnt = cause(answer, "motor-burnt").counted();
        assertTrue(burnt.prior() < 0.03, "none in twenty is less than sometimes");
        assertEquals((10 * 0.03 + 0) / 30, burnt.prior(), EXACT);
        assertEquals(20, wet.of());
        assertTrue(wet.prior() > 0.2);
    }

    /** The case in hand is no evidence for itself, and a job elsewhere tells something once its cause is found. */
    @ParameterizedTest
    @CsvSource({"winch-1, 'state=\"OPEN\"', 0", "winch, 'state=\"OPEN\"', 1", "winch, 'state=\"WAITING_FOR_PARTS\"', 1",
        "winch-1, 'state=\"CLOSED\"', 1", "winch-1, 'state=\"OPEN\" closed=\"2026-05-07\"', 1", "winch-1, '', 1"})
    void aJobUnderWayIsNoEvidenceForItsOwnUnit(String about, String state, int times) throws Exception {
        shop.job("one", "motor-burnt", "opened=\"2026-05-05\" " + state, "");
        var answer = shop.ask(SmallShop.question(about, List.of("Winch does not pull"), List.of(), null));
        var burnt = SmallShop.cause(answer, "motor-burnt");
        assertEquals(times, burnt.counted().events());
        assertEquals(times, burnt.witnesses().stream().filter(one -> one.kind() == Witness.Kind.JOB).count());
    }

    @Test
    void aJobUnderWayWithoutACauseIsNotOneOfTheMany() throws Exception {
        shop.job("one", "motor-burnt", "opened=\"2026-05-05\" state=\"CLOSED\"", "");
        shop.job("two", "", "opened=\"2026-06-05\" state=\"WAITING_FOR_ANSWER\"", "");
        assertEquals(1, SmallShop.cause(shop.ask("Winch does not pull"), "motor-burnt").counted().of());
        shop.job("three", "", "opened=\"2026-06-05\" state=\"CLOSED\"", "");
        assertEquals(2, SmallShop.cause(shop.ask("Winch does not pull"), "motor-burnt").counted().of());
    }

    @Test
    void aJobItsNoteAndASightingOfItAreOneCase() throws Exception {
        shop.job("one", "motor-burnt", "opened=\"2026-05-05\"", "");
        assertEquals(1, cause(shop.ask(DEAD), "motor-burnt").counted().events());
        shop.note("of-job", "motor-burnt", "status=\"SEEN\"",
                SYMPTOM + "<job href=\"../../jobs/2026/job-2026-one.xmi#job-2026-one\"/>");
        assertEquals(1, cause(shop.ask(DEAD), "motor-burnt").counted().events());
        shop.note("near", "motor-burnt", "status=\"SEEN\" date=\"2026-05-20\"", ON_UNIT);
        assertEquals(1, cause(shop.ask(DEAD), "motor-burnt").counted().events());
        shop.note("later", "motor-burnt", "status=\"SEEN\" date=\"2026-09-20\"", ON_UNIT);
        assertEquals(2, cause(shop.ask(DEAD), "motor-burnt").counted().events());
        shop.note("counted", "motor-burnt", "status=\"SEEN\"", "<seen count=\"3\" ofAbout=\"12\"><sightings date=\"2026-05-04\">"
                + ON_UNIT + "</sightings><sightings date=\"2026-09-20\">" + ON_UNIT + "</sightings></seen>");
        var counted = cause(shop.ask(DEAD), "motor-burnt").counted();
        assertEquals(3, counted.events());
        assertEquals(12, counted.of());
        assertEquals((10 * 0.03 + 2) / 12, counted.prior(), EXACT, "what two cases alone make of it is not lowered");
        assertEquals(12, counted.worth());
    }

    @Test
    void aSuspectedCaseCountsLessThanOneThatWasSeen() throws Exception {
        shop.note("one", "motor-burnt", "status=\"SUSPECTED\"", SYMPTOM + tally(4, 20));
        assertEquals((0.3 + 2) / 30, cause(shop.ask(DEAD), "motor-burnt").counted().prior(), EXACT);
        shop.note("one", "motor-burnt", "status=\"SEEN\"", SYMPTOM + tally(4, 20));
        assertEquals((0.3 + 4) / 30, cause(shop.ask(DEAD), "motor-burnt").counted().prior(), EXACT);
    }

    @Test
    void fewJobsOnRecordDoNotMeanThatFewWereDone() throws Exception {
        shop.job("one", "motor-burnt", "opened=\"2026-05-05\"", "");
        assertEquals((0.3 + 1) / 11, cause(shop.ask(DEAD), "motor-burnt").counted().prior(), EXACT);
        shop.note("wet", "motor-wet", "status=\"SEEN\"", tally(4, 40));
        assertEquals((0.3 + 1) / 50, cause(shop.ask(DEAD), "motor-burnt").counted().prior(), EXACT);
    }

    @Test
    void theShopsOwnWeightsCount() throws Exception {
        var usual = burnt();
        shop.shop("<weights id=\"weight-a\" kind=\"MET_SOMETIMES\" value=\"0.3\" source=\"own count\"/>");
        assertTrue(burnt() > usual);
        shop.shop("<weights id=\"weight-a\" kind=\"MET_SOMETIMES\" value=\"7\"/><weights id=\"weight-b\" value=\"0.3\"/>");
        assertEquals(usual, burnt(), EXACT);
    }

    @Test
    void aDocumentIsNeverACount() throws Exception {
        shop.put("documents/d1.xmi", "<book:Document %s id=\"d1\" formatVersion=\"1\" title=\"On motors\" number=\"M-1\">"
                + "<symptoms>Humming at night</symptoms><components href=\"../machines/winch.xmi#motor\"/>"
                + "<components href=\"../machines/winch.xmi#switch\"/>"
                + "<applicability serialFrom=\"W100\" serialTo=\"W199\"><machine href=\"../machines/winch.xmi#winch\"/>"
                + "</applicability></book:Document>");
        var burnt = cause(shop.ask("Humming at night"), "motor-burnt");
        assertEquals(0, burnt.counted().events());
        assertEquals(List.of("the maker knows of it"), burnt.witnesses().stream().map(Words::witness).toList());
        assertEquals("M-1: On motors", burnt.witnesses().get(0).title());
        assertEquals("Hand switch: way of failing not recorded", cause(shop.ask("Humming at night"), "switch").title());
        assertFalse(shop.ask(question("winch-1", List.of("Humming at night"), List.of(), null)).isKnown(),
                "W200 is not among W100 to W199");
    }

    @Test
    void aNoteOnAComponentAloneMakesItACandidate() throws Exception {
        shop.note("switch", "", "status=\"SEEN\"", "<symptoms>Stops now and then</symptoms>"
                + "<component href=\"../../machines/winch.xmi#switch\"/>");
        var answer = shop.ask("stops now and then");
        assertEquals(List.of("switch"), answer.causes().stream().map(cause -> cause.address().id()).toList());
        assertEquals(1, answer.causes().get(0).counted().events());
        assertTrue(answer.unknown().isEmpty());
    }

    @Test
    void aCodeTheLibraryDoesNotHoldIsKeptAsWritten() throws Exception {
        var answer = shop.ask(question("winch", List.of(DEAD), List.of("X9Z9"), null));
        assertEquals(List.of("X9Z9"), answer.path().codesAsWritten());
        assertEquals(List.of("X9Z9"), answer.unknown().stream().map(Finding::label).toList());
        assertEquals(List.of(DEAD), answer.path().symptoms());
    }

    @Test
    void whatCanHurtSomebodyIsCheckedFirst() throws Exception {
        var answer = shop.ask(DEAD, "Load creeps down");
        assertEquals("lining-oily", answer.checks().order().get(0).id());
        assertTrue(answer.checks().order().get(0).critical());
        assertFalse(answer.checks().order().get(1).critical());
    }

    /** The book has words for a look into the motor; only where it names the work as the check is that what it sends somebody to. */
    @ParameterizedTest
    @CsvSource({"SERVICE, '', motor-wet", "TEACH_IN, '', motor-wet", "TEST, '', look", "ADJUST, '', look", "SERVICE, look, look"})
    void whatWorkShowsByTheWayIsNoCheckWhereThereIsALook(String kind, String named, String id) throws Exception {
        if (!named.isEmpty()) {
            shop.machine(SmallShop.WINCH.replace("<checkText>Look into the motor.</checkText>",
                    "<checkText>Look into the motor.</checkText><check href=\"../procedures/long.xmi#long\"/>"));
        }
        shop.put("procedures/long.xmi", "<book:Procedure %s id=\"long\" formatVersion=\"1\" title=\"Long work\" kind=\"" + kind
                + "\"><applicability><machine href=\"../machines/winch.xmi#winch\"/></applicability><ways id=\"way\"><work id=\"work\""
                + " minutesUsual=\"90 min\"><steps id=\"look\"><text>Look in.</text><outcomes id=\"drops\" answer=\"Drops\">"
                + "<points href=\"../machines/winch.xmi#motor-wet\"/></outcomes></steps></work></ways></book:Procedure>");
        var checks = shop.ask(DEAD).checks().order().stream().filter(check -> check.results().stream()
                .anyMatch(result -> result.points().stream().anyMatch(cause -> cause.address().id().equals("motor-wet"))));
        assertEquals(List.of(id), checks.map(NextCheck::id).toList());
    }

    @Test
    void openingIsCountedOnceForTheChecksBehindOneCover() throws Exception {
        var order = shop.ask(DEAD).checks().order();
        assertEquals(List.of(30.0, 10.0), order.stream().map(NextCheck::added).toList());
        assertEquals(List.of(30.0, 30.0), order.stream().map(NextCheck::alone).toList());
        assertEquals(List.of("Cover off"), order.get(0).opens().stream().map(Named::title).toList());
        assertFalse(order.get(0).timed());
        assertEquals(List.of("yes", "no"), order.get(0).results().stream().map(NextCheck.Result::answer).toList());
    }

    @Test
    void anAnsweredCheckIsNotAskedAgain() throws Exception {
        var answer = shop.ask(question("winch", List.of(DEAD), List.of(), null, "motor-burnt=no"));
        assertEquals(List.of("motor-wet"), answer.checks().order().stream().map(NextCheck::id).toList());
        assertEquals("Motor burnt: no\nPoints to: Motor wet", answer.path().text());
        var again = shop.ask(question("winch", List.of(DEAD), List.of(), null, "motor-burnt=no", "motor-burnt=yes"));
        assertEquals("motor-burnt", again.causes().get(0).address().id(), "the last answer counts");
        assertEquals(1, again.path().steps().size());
    }

    @Test
    void aQuestionGrowsByAnswers() throws Exception {
        var more = question("winch", List.of(DEAD), List.of(), null).with("motor-burnt", "no");
        assertEquals("motor-wet", shop.ask(more).causes().get(0).address().id());
    }

    @Test
    void whatBringsACauseAboutAndWhatItSpoilsIsShown() throws Exception {
        var answer = shop.ask("Load creeps down");
        var lining = cause(answer, "lining-oily");
        assertEquals(List.of("Motor wet"), lining.broughtAboutBy().stream().map(Named::title).toList());
        assertEquals(List.of("Motor"), lining.spoils().stream().map(Named::title).toList());
        assertTrue(lining.critical());
        assertEquals("Wipe the lining with a white rag.", lining.proof());
        assertEquals(List.of("Lining oily"), cause(shop.ask(DEAD), "motor-wet").spoils().stream().map(Named::title).toList());
    }

    @Test
    void howSureIsWiderWithFewerCases() throws Exception {
        var few = cause(shop.ask(DEAD), "motor-burnt");
        assertTrue(few.low() < few.chance() && few.chance() < few.high());
        shop.note("many", "motor-burnt", "status=\"SEEN\"", tally(30, 1000));
        var many = cause(shop.ask(DEAD), "motor-burnt");
        assertTrue(many.high() - many.low() < (few.high() - few.low()) / 2);
    }

    @Test
    void everyMoveSaysFromWhereToWhere() throws Exception {
        var burnt = cause(shop.ask(question("winch", List.of(DEAD), List.of("W101"), null, "motor-wet=no")), "motor-burnt");
        assertEquals(3, burnt.moves().size());
        burnt.moves().forEach(move -> assertEquals(burnt.chance(), move.to(), EXACT));
        assertTrue(burnt.moves().stream().allMatch(Move::isUp));
        for (int i = 1; i < 3; i++) {
            assertTrue(burnt.moves().get(i - 1).from() <= burnt.moves().get(i).from(), "the strongest first");
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"nobody | x | | | There is no machine or unit 'nobody'",
        "w1 | x | | | There is no machine or unit 'w1'", "winch | | | | Nothing was asked",
        "winch | x | nothing | | There is no procedure 'nothing'", "winch | x | | none=yes | There is no check 'none'",
        "winch | x | | motor-burnt=perhaps | 'perhaps' is no answer to 'motor-burnt': give one of 'yes' (yes), 'no' (no)"})
    void aWrongQuestionIsAnsweredByWhatToDo(String about, String symptom, String after, String answer, String words) {
        var question = question(about, symptom == null ? List.of() : List.of(symptom), List.of(), after,
                answer == null ? new String[0] : new String[] {answer});
        var message = assertThrows(QuestionException.class, () -> shop.ask(question)).getMessage();
        assertTrue(message.startsWith(words), message);
    }

    /** What the customer said besides, in words of his own, takes nothing away from what is known; a code that nobody knows does. */
    @Test
    void wordsThatNobodyKnowsMoveNothing() throws Exception {
        var alone = SmallShop.cause(shop.ask(DEAD), "motor-burnt").chance();
        var answer = shop.ask(DEAD, "my brother laughed");
        assertEquals(alone, SmallShop.cause(answer, "motor-burnt").chance(), 1e-12);
        assertEquals(List.of("my brother laughed"), answer.unknown().stream().map(Finding::label).toList());
        var coded = shop.ask(question("winch", List.of(DEAD), List.of("X9Z9"), null));
        assertTrue(SmallShop.cause(coded, "motor-burnt").chance() < alone);
    }

    @Test
    void whatComesNearestInWordsIsNamedAndIsNoEvidence() throws Exception {
        var answer = shop.ask("pulls a bit less, it creeps and whines every Friday");
        assertFalse(answer.isKnown());
        assertEquals(List.of("Winch does not pull: [motor-burnt, motor-wet]", "Load creeps down: [lining-oily]"),
                answer.nearest().stream().map(near -> near.words() + ": "
                        + near.causes().stream().map(cause -> cause.address().id()).sorted().toList()).sorted(Comparator.reverseOrder()).toList());
        assertEquals(List.of(), shop.ask("zzz").nearest());
        assertEquals(List.of(), shop.ask(DEAD).nearest());
        assertEquals(List.of(), shop.ask(question("winch", List.of(), List.of("X9Z9"), null)).nearest());
    }

    @Test
    void wordsAmongTheCodesAreAComplaintAndTheUnitsNameIsNone() throws Exception {
        var answer = shop.ask(question("winch-1", List.of(), List.of("does not pull w101"), null));
        assertEquals(List.of("W101: No movement", "does not pull"), answer.findings().stream().map(Finding::label).toList());
        assertTrue(answer.unknown().isEmpty());
        assertFalse(shop.ask(question("winch-1", List.of("Winch 1"), List.of(), null)).isKnown());
    }

    @Test
    void moreFindingsThanCanBeWeighedAreSaid() throws Exception {
        var many = java.util.stream.IntStream.range(0, 14).mapToObj(i -> "strange noise number " + i).toList();
        assertTrue(shop.ask(many.toArray(String[]::new)).remarks().get(0).startsWith("More was found"));
        assertEquals(List.of(), shop.ask(DEAD).remarks());
    }

    @Test
    void ofTwoPagesForOneCodeThisMachinesOwnIsMeant() throws Exception {
        shop.put("codes/a-crane-w1.xmi", "<book:FaultCode %s id=\"a-crane-w1\" formatVersion=\"1\" title=\"Crane stops\""
                + " scheme=\"MAKER\" code=\"W101\"/>");
        var findings = shop.ask(question("winch", List.of(), List.of("W101"), null)).findings();
        assertEquals(List.of("w1"), findings.stream().map(finding -> finding.code().orElseThrow().id()).toList());
    }
}
