// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import static org.benchlore.plan.QuayCrane.to;
import static org.benchlore.plan.QuayCrane.way;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts and supplies of a plan, proofs of it, and the job it starts. */
class GoodsTest {

    @TempDir
    Path folder;

    private QuayCrane crane;

    @BeforeEach
    void aKitOfFourBoltsAndASeal() throws Exception {
        crane = new QuayCrane(folder).put("parts/bolt.xmi", "Part", "id=\"bolt\" title=\"Bolt\" leadTime=\"2 d\"", "")
                .put("parts/seal.xmi", "Part", "id=\"seal\" leadTime=\"5 d\"", "")
                .put("parts/kit.xmi", "Part", "id=\"kit\"", "<kit quantity=\"4\"><part href=\"bolt.xmi#bolt\"/></kit>"
                        + "<kit><part href=\"seal.xmi#seal\"/></kit>")
                .put("supplies/oil.xmi", "Supply", "id=\"oil\" price=\"20.00\" pack=\"4 L\"", "");
    }

    private static String part(String use, String id, String attributes) {
        return "<parts id=\"" + use + "\" " + attributes + "><part href=\"../parts/" + id + ".xmi#" + id + "\"/></parts>";
    }

    private static String supply(String use, String attributes) {
        return "<supplies id=\"" + use + "\" " + attributes + "><supply href=\"../supplies/oil.xmi#oil\"/></supplies>";
    }

    private Plan plan(String body) throws Exception {
        return crane.procedure("renew", "RENEW", "", way("way", "", "minutesUsual=\"5 min\"", body)).plan("renew");
    }

    private static String line(PartLine line) {
        return line.id() + " " + line.quantity() + " in kits " + line.inKits() + (line.isOnlyIfFound() ? " if found" : "")
                + " stock " + line.stock() + " lead " + line.leadMinutes() + (line.isMissing() ? " missing" : "");
    }

    private List<String> parts(String body) throws Exception {
        return plan(body).parts().stream().map(GoodsTest::line).toList();
    }

    @Test
    void whatComesInAKitIsNotCountedASecondTime() throws Exception {
        assertEquals(List.of("kit 1 in kits 0 stock 0 lead 0 missing", "bolt 2 in kits 4 stock 0 lead 2880 missing",
                "seal 0 in kits 1 stock 0 lead 0"), parts(part("u1", "kit", "") + part("u2", "bolt", "quantity=\"6\"")
                        + part("u3", "seal", "")));
        assertEquals(List.of("kit 2 in kits 0 stock 0 lead 0 missing", "bolt 0 in kits 6 stock 0 lead 0"),
                parts(part("u1", "kit", "quantity=\"2\"") + part("u2", "bolt", "quantity=\"6\"")));
    }

    @Test
    void usesOfOnePartAreAddedUpAndThoseOnlyIfFoundStandApart() throws Exception {
        assertEquals(List.of("bolt 3 in kits 0 stock 0 lead 2880 missing", "bolt 5 in kits 0 if found stock 0 lead 2880 missing"),
                parts(part("u1", "bolt", "") + part("u2", "bolt", "quantity=\"2\"") + part("u3", "bolt", "quantity=\"5\" need=\"IF_FOUND\"")));
        assertEquals(List.of(), parts(part("u1", "bolt", "quantity=\"0\"")));
    }

    @Test
    void whatIsRenewedInItsPlaceAnywayIsNotLaidReadyOnceMore() throws Exception {
        crane.crane("<components id=\"left\"/><components id=\"right\"/>");
        var left = "<component href=\"../machines/crane.xmi#left\"/></parts>";
        var right = "<component href=\"../machines/crane.xmi#right\"/></parts>";
        assertEquals(List.of("bolt 1 in kits 0 stock 0 lead 2880 missing", "bolt 3 in kits 0 if found stock 0 lead 2880 missing",
                "seal 1 in kits 0 if found stock 0 lead 7200 missing"), parts(
                        part("u1", "bolt", "").replace("</parts>", left) + part("u2", "bolt", "need=\"IF_FOUND\" quantity=\"9\"")
                                .replace("</parts>", left) + part("u3", "bolt", "need=\"IF_FOUND\" quantity=\"2\"").replace("</parts>", right)
                        + part("u4", "bolt", "need=\"IF_FOUND\"") + part("u5", "seal", "need=\"IF_FOUND\"").replace("</parts>", left)));
    }

    private static String stock(String id, String quantity) {
        return "<stock quantity=\"" + quantity + "\" id=\"stock-" + id + quantity.hashCode() + "\"><part href=\"parts/" + id + ".xmi#"
                + id + "\"/></stock>";
    }

    @Test
    void whatLiesAtTheSitesIsEnoughOrMissing() throws Exception {
        crane.shop("", "<sites id=\"one\">" + stock("bolt", "2 pcs") + stock("bolt", "9 kg") + "</sites><sites id=\"two\">"
                + stock("bolt", "1 pcs") + stock("seal", "7 pcs") + "<stock id=\"bare\"/></sites>");
        assertEquals(List.of("bolt 3 in kits 0 stock 3 lead 0"), parts(part("u1", "bolt", "quantity=\"3\"")));
        assertEquals(List.of("bolt 4 in kits 0 stock 3 lead 2880 missing"), parts(part("u1", "bolt", "quantity=\"4\"")));
    }

    /** Wednesday 8:00; bolts in two days, on Friday 8:00, seals in five, on Monday 8:00; what is only if found waits for nobody. */
    @Test
    void theHandBackWaitsForTheSlowestMissingPart() throws Exception {
        assertEquals("2026-03-06T08:05", plan(part("u1", "bolt", "")).times().handBack().toString());
        assertEquals("2026-03-09T08:05", plan(part("u1", "bolt", "") + part("u2", "seal", "")).times().handBack().toString());
        assertEquals("2026-03-05T08:05", plan(part("u1", "seal", "need=\"IF_FOUND\"")).times().handBack().toString());
    }

    private List<String> supplies(String body) throws Exception {
        return plan(body).supplies().stream().map(line -> (line.isOut() ? "out " : "") + line.id() + " " + line.quantities() + " "
                + line.price().map(BigDecimal::stripTrailingZeros).map(BigDecimal::toPlainString).orElse("?")).toList();
    }

    @Test
    void suppliesAreAddedUpInTheUnitOfTheFirstAndWhatComesOutStandsApart() throws Exception {
        assertEquals(List.of("oil [1.5 l] 7.5", "out oil [3 L] ?"), supplies(supply("s1", "quantity=\"1 L\" way=\"IN\"")
                + supply("s2", "quantity=\"3 L\" way=\"OUT\"") + supply("s3", "quantity=\"500 mL\"")));
        assertEquals(List.of("oil [1 L, 2 kg] ?"), supplies(supply("s1", "quantity=\"1 L\"") + supply("s2", "quantity=\"2 kg\"")));
        assertEquals(List.of("oil [] ?"), supplies(supply("s1", "")));
        assertEquals(List.of("oil [2 L] 10"), supplies(supply("s1", "") + supply("s2", "quantity=\"2 L\"")));
    }

    /** The winch's oil is out after the first of two works on it; what is drained elsewhere is more. */
    @Test
    void aSystemThatSeveralWorksDrainIsEmptyAfterTheFirst() throws Exception {
        var of = "<component href=\"../machines/crane.xmi#%s\"/>";
        crane.crane("<components id=\"winch\"><components id=\"winch-seal\"/></components><components id=\"slew\"/>");
        crane.procedure("a", "RENEW", "", of.formatted("winch-seal") + way("w1", "", "", supply("s1", "quantity=\"3 L\" way=\"OUT\"")))
                .procedure("b", "RENEW", "", of.formatted("winch") + way("w2", "", "", supply("s2", "quantity=\"2000 mL\" way=\"OUT\"")
                        + supply("s3", "quantity=\"1500 mL\" way=\"OUT\"")))
                .procedure("c", "RENEW", "", of.formatted("slew") + way("w3", "", "", supply("s4", "quantity=\"1 L\" way=\"OUT\"")));
        assertEquals(List.of("out oil [3500 ml] ?"), out("a", "b"));
        assertEquals(List.of("out oil [3500 ml] ?"), out("b"));
        assertEquals(List.of("out oil [4500 ml] ?"), out("b", "c"));
    }

    private List<String> out(String... ids) throws Exception {
        return crane.plan(ids).supplies().stream()
                .map(line -> (line.isOut() ? "out " : "") + line.id() + " " + line.quantities() + " ?").toList();
    }

    private List<String> proofs(String... verifications) throws Exception {
        crane.work("a", "RENEW", "", "", verifications[0]).work("b", "RENEW", "", "", verifications[1]);
        return crane.plan("a", "b").items(PlanItem.Part.PROOF).stream().map(item -> item.id() + " " + item.minutes().usual() + " "
                + item.title()).toList();
    }

    private static String proof(String id, String kind, String attributes) {
        return "<verifications id=\"" + id + "\" kind=\"" + kind + "\" " + attributes + "/>";
    }

    @Test
    void ofTrialRunsTheGentlestComesFirst() throws Exception {
        assertEquals(List.of("w3 10 B", "w1 15 A", "v3 0 A", "v2 20 A", "w2 30 B"), proofs(proof("v2", "TRIAL_RUN",
                "load=\"1000 kg\" duration=\"20 min\"") + proof("v3", "TRIAL_RUN", "load=\"900 kg\"") + proof("w1", "TRIAL_RUN", "duration=\"15 min\""),
                proof("w2", "TRIAL_RUN", "load=\"2 t\" duration=\"30 min\"") + proof("w3", "TRIAL_RUN", "duration=\"10 min\"")));
    }

    @Test
    void proofsStandPressureFirstThenTrialRunWithWhatFollowsItThenColdStartsThenCodes() throws Exception {
        assertEquals(List.of("v5 0 A", "v6 0 B", "v3 30 A", "v4 0 A", "v2 20 A", "v1 0 A"), proofs(proof("v1", "CODES_READ_AGAIN", "")
                + proof("v2", "COLD_START", "starts=\"2\"") + proof("v3", "TRIAL_RUN", "distance=\"20 km\"") + proof("v4", "OTHER", "")
                + proof("v5", "PRESSURE_HOLD", ""), proof("v6", "NOT_RECORDED", "") + proof("v7", "CODES_READ_AGAIN", "duration=\"5 min\"")));
    }

    @Test
    void theSameProofIsMadeOnceAndAnythingElseInItMakesItAnother() throws Exception {
        assertEquals(List.of("v1 10 A"), proofs(proof("v1", "COLD_START", ""), proof("v2", "COLD_START", "")));
        for (var other : List.of("duration=\"10 min\"", "distance=\"1 km\"", "starts=\"2\"", "soak=\"1 h\"", "load=\"1 t\"")) {
            assertEquals(2, proofs(proof("v1", "COLD_START", ""), proof("v2", "COLD_START", other)).size(), other);
        }
    }

    @Test
    void aProofTakesItsOwnTimeElseThatOfItsDistanceElseThatOfItsStarts() throws Exception {
        assertEquals(List.of("v1 7 A", "v2 15 B"), proofs(proof("v1", "TRIAL_RUN", "duration=\"7 min\" distance=\"99 km\" starts=\"9\""),
                proof("v2", "COLD_START", "distance=\"10 km\" starts=\"9\"")));
    }

    private static final String CHAIN = "<functions id=\"fn-lifts\" title=\"It lifts\"/><functions id=\"fn-other\"/>"
            + "<components id=\"drive\" functions=\"fn-lifts\"><components id=\"motor\" functions=\"fn-lifts\">"
            + "<parts href=\"../parts/bolt.xmi#bolt\"/></components></components>"
            + "<components id=\"brake\" functions=\"fn-lifts\"><parts href=\"../parts/seal.xmi#seal\"/></components>"
            + "<components id=\"frame\" functions=\"fn-lifts\"/>"
            + "<components id=\"lamp\" functions=\"fn-other\"><parts href=\"../parts/seal.xmi#seal\"/></components>";

    private List<String> left(String component) throws Exception {
        crane.crane(CHAIN).procedure("renew", "RENEW", "", way("way", "", "", "<parts id=\"use\"><part href=\"../parts/bolt.xmi#bolt\"/>"
                + (component.isEmpty() ? "" : "<component href=\"../machines/crane.xmi#" + component + "\"/>") + "</parts>"));
        try (var library = crane.open()) {
            var plan = new Planner(library).plan(new PlanRequest("crane-1", List.of("renew"), List.of(), List.of(),
                    QuayCrane.WEDNESDAY, java.util.Optional.empty()));
            var job = JobStart.of(library, plan, "job-2026-crane-a2b3");
            assertEquals("Crane 1: Renew", job.getTitle());
            assertEquals(QuayCrane.WEDNESDAY, job.getOpened());
            assertFalse(job.isInvented());
            assertTrue(job.getLeft().stream().allMatch(it -> it.getText().equals("Left by the plan; to be confirmed")));
            return job.getLeft().stream().map(it -> it.getComponent().getId()).toList();
        }
    }

    @Test
    void aJobStartsWithWhatStaysInPlaceInTheChainOfWhatIsRenewed() throws Exception {
        assertEquals(List.of("brake"), left("motor"), "the frame has no part of its own, the lamp another function");
        assertEquals(List.of("brake"), left("drive"), "with the drive its motor is renewed");
        assertEquals(List.of("motor"), left("brake"));
        assertEquals(List.of(), left(""));
    }

    @Test
    void aJobOnAMachineWithoutAUnitIsRefused() throws Exception {
        crane.work("renew", "RENEW", "", "", to("afterClosing"));
        try (var library = crane.open()) {
            var plan = new Planner(library).plan(new PlanRequest("crane", List.of("renew"), List.of(), List.of(),
                    QuayCrane.WEDNESDAY, java.util.Optional.empty()));
            assertEquals("A job is done on one unit: plan for a unit, not for a machine.", assertThrows(
                    IllegalArgumentException.class, () -> JobStart.of(library, plan, "job-2026-crane-a2b3")).getMessage());
        }
    }
}
