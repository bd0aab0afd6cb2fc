// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type over the demonstration library. */
class SearchTest {

    private static final String NOTE = "note-2025-learning-fails-on-a-fresh-install-k7m3";

    @TempDir
    static Path folder;

    private static Demonstration demonstration;
    private static Library library;
    private static SearchIndex index;

    @BeforeAll
    static void open() throws Exception {
        demonstration = Demonstration.open(folder);
        library = demonstration.library();
        index = demonstration.index();
    }

    @AfterAll
    static void close() throws Exception {
        demonstration.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"learning fails on a fresh install", "learning fails", "fails learning fresh install",
        "suspect hydraulic actuator", "learning fails 4c17", "Learning FAILS on a fresh inst", "fresh install learn",
        "hydralic actuator", "actuator wont learn in", "teach in stops fresh install", "hyd act fresh install",
        "4C17", "4c17", "0x4C17", "code 4C17", "4C-17", "4c 17", "DTC 4C17"})
    void theNoteOfTheMomentOfNeedIsFirstOrSecond(String text) {
        var firstTwo = ids(text).stream().limit(2).toList();
        assertTrue(firstTwo.contains(NOTE), () -> text + " gives " + ids(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"SPN 520192 FMI 31", "520192/31", "spn520192 fmi31", "SPN:520192 FMI:31", "00 F0 FF 1F"})
    void aCodeIsFoundInItsOtherForms(String text) {
        assertTrue(ids(text).stream().limit(2).toList().contains(NOTE), () -> text + " gives " + ids(text));
    }

    /** Nothing that is shown while the line is being typed may push the right note out of sight again. */
    @Test
    void theNoteStaysInSightWhileItIsTyped() {
        var text = "learning fails on a fresh install";
        for (int end = "learning f".length(); end <= text.length(); end++) {
            var typed = text.substring(0, end);
            assertTrue(ids(typed).stream().limit(5).toList().contains(NOTE), () -> typed + " gives " + ids(typed));
        }
    }

    @ParameterizedTest
    @CsvSource({"3105, pto-actuator", "KT 40 3105-B, pto-actuator", "kt403105, pto-actuator", "40-3105, pto-actuator"})
    void aPieceOfAPartNumberIsEnough(String typed, String part) {
        assertTrue(ids(typed).stream().limit(4).toList().contains(part), () -> typed + " gives " + ids(typed));
    }

    @Test
    void theBeginningOfAWordIsEnough() {
        assertTrue(find("vibr").total() > 0);
        assertTrue(find("vi").total() > 0);
        assertEquals(find("vibration").hits().get(0).row(), find("vibrat").hits().get(0).row());
    }

    @ParameterizedTest
    @CsvSource({"hydrualic, hydraulic", "actautor, actuator", "vibartion, vibration"})
    void whatIsSpeltNearlySoIsFoundAndSaid(String typed, String meant) {
        var results = find(typed + " ");
        assertTrue(results.total() > 0);
        if (results.meant().isPresent()) {
            assertEquals(meant, results.meant().get());
        } else {
            var why = why(typed + " ", results.hits().get(0).row());
            assertTrue(why.toString().contains("(for " + typed + ")"), why::toString);
        }
    }

    @Test
    void aWordWithADigitIsNeverBent() {
        assertEquals(0, find("4C18x").total());
        assertEquals(0, find("lorry14x9 ").total());
    }

    @Test
    void theKindNarrows() {
        var results = index.find(Query.of("actuator").narrowedTo(Facet.KIND, "part"));
        assertTrue(results.total() > 0);
        assertTrue(results.hits().stream().allMatch(hit -> hit.row().kind().word().equals("part")));
    }

    @Test
    void theMachineNarrowsButKeepsWhatIsForAllMachines() {
        var all = find("bearing").hits().stream().map(hit -> hit.row().machines()).flatMap(List::stream).toList();
        assertTrue(all.stream().anyMatch(machine -> machine.id().equals("quillfen-s6")));
        var results = index.find(Query.of("bearing").narrowedTo(Facet.MACHINE, "dravholm-hl26"));
        assertTrue(results.hits().stream().allMatch(hit -> hit.row().machines().isEmpty()
                || hit.row().machines().stream().anyMatch(machine -> machine.id().equals("dravholm-hl26"))));
    }

    @Test
    void countsSayWhatNarrowingWouldLeave() {
        var results = index.find(Query.of("actuator").withCounts());
        for (var facet : results.counts().keySet()) {
            for (var count : results.counts().get(facet)) {
                var narrowed = index.find(Query.of("actuator").narrowedTo(facet, count.value()).withCounts());
                assertEquals(count.hits(), narrowed.total(), facet + " " + count.value());
            }
        }
        assertTrue(results.counts().get(Facet.KIND).stream().anyMatch(count -> count.value().equals("note")));
        assertTrue(results.counts().get(Facet.SYSTEM).size() > 0);
    }

    @Test
    void aFacetThatIsNarrowedByStillShowsItsOtherValues() {
        var all = index.find(Query.of("actuator").withCounts()).counts().get(Facet.KIND);
        var narrowed = index.find(Query.of("actuator").narrowedTo(Facet.KIND, "note").withCounts());
        assertEquals(all, narrowed.counts().get(Facet.KIND));
    }

    @Test
    void theTotalOfACountedQueryIsExact() {
        var results = index.find(new Query("actuator", Map.of(), 3, true));
        assertFalse(results.isLeast());
        assertEquals(results.total(), index.find(new Query("actuator", Map.of(), 500, false)).hits().stream()
                .filter(Hit::whole).count());
    }

    @Test
    void whatDoesNotHoldEveryWordComesAfterWhatDoes() {
        assertFalse(find("learning fails").loosened());
        var results = find("learning fails zzzzqq");
        assertTrue(results.loosened());
        assertEquals(NOTE, results.hits().get(0).row().id());
        var mixed = find("learning fails install").hits().stream().map(Hit::whole).toList();
        assertEquals(mixed.stream().sorted(java.util.Comparator.reverseOrder()).toList(), mixed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "zzzzqq", "\"", "*:*", "!!!"})
    void nothingIsFoundWithoutAFault(String text) {
        assertEquals(0, find(text).total());
    }

    @Test
    void theLimitHolds() {
        var results = index.find(new Query("the", Map.of(), 3, false));
        assertEquals(3, results.hits().size());
        assertTrue(results.total() > 3);
    }

    @Test
    void aHitSaysWhyItIsOne() {
        var row = library.catalogue().byId(NOTE).orElseThrow();
        assertEquals("in the title: learning, fails, fresh install", why("learning fails fresh install", row).get(0));
        assertEquals("code 4C17", why("4C17", row).get(0));
        assertTrue(why("hydralic actuator", row).toString().contains("hydraulic (for hydralic)"));
    }

    @Test
    void thePassageMarksWhatFits() {
        var query = Query.of("bench piston tilts");
        var row = index.find(query).hits().get(0).row();
        var passage = index.passages(query, List.of(row)).get(0);
        assertFalse(passage.marks().isEmpty());
        for (var mark : passage.marks()) {
            assertTrue(mark.start() >= 0 && mark.end() <= passage.text().length() && mark.start() < mark.end());
        }
        assertFalse(passage.text().contains("\n"));
        var title = index.passages(Query.of("fresh inst"), List.of(library.catalogue().byId(NOTE).orElseThrow())).get(0);
        assertEquals(List.of("fresh", "install"), title.titleMarks().stream().map(mark -> library.catalogue()
                .byId(NOTE).orElseThrow().title().substring(mark.start(), mark.end())).toList());
    }

    @Test
    void aPassageDoesNotSayTheTitleAgain() {
        var row = library.catalogue().byId(NOTE).orElseThrow();
        var passage = index.passages(Query.of("fresh install pack"), List.of(row)).get(0);
        assertFalse(passage.text().startsWith("learning fails"), passage::text);
    }

    @Test
    void ofANameOfSeveralWordsOnlyTheWholeIsMarked() {
        var row = library.catalogue().byId("job-2025-clutch-pack-lorry-17-w4t9").orElseThrow();
        var passage = index.passages(Query.of("fails"), List.of(row)).get(0);
        for (var mark : passage.marks()) {
            var word = passage.text().substring(mark.start(), mark.end());
            assertFalse(word.equalsIgnoreCase("good") || word.equalsIgnoreCase("ok"), passage::text);
        }
    }

    @Test
    void theGlossaryExplainsWordsAndComesLate() {
        var ids = ids("learning fails fresh install");
        assertTrue(ids.indexOf("glossary") < 0 || ids.indexOf("glossary") >= 3, ids::toString);
    }

    @Test
    void wordsOfTheGlossaryThatNobodyExplainedAreNoHits() {
        assertFalse(ids("mayonnaise").contains("glossary"));
        assertTrue(ids("bite point of the plates").contains("glossary"), "its entry says what it is");
    }

    @Test
    void relatedToANoteAreItsProcedureAndItsBulletin() {
        var related = index.related(library.catalogue().byId(NOTE).orElseThrow(), 12).stream().map(Row::id).toList();
        assertTrue(related.contains("renew-pto-clutch-pack"), related::toString);
        assertTrue(related.contains("bulletin-e47-issue-2"), related::toString);
        assertFalse(related.contains(NOTE));
    }

    @Test
    void provedComesBeforeSuspectedBeforeRuledOut() {
        var statuses = List.of("HELD", "SEEN", "SUSPECTED", "UNSORTED", "RULED_OUT", "SUPERSEDED");
        var weights = statuses.stream().map(status -> Weights.of(row(status), library.top(NOTE).orElseThrow())).toList();
        assertEquals(weights.stream().sorted(java.util.Comparator.reverseOrder()).toList(), weights);
    }

    private static Row row(String status) {
        var row = library.catalogue().byId(NOTE).orElseThrow();
        return new Row(row.address(), row.kind(), row.title(), status, row.date(), true,
                List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty(), List.of(), java.util.Set.of(),
                Optional.empty(), 0);
    }

    @Test
    void aSupersededEditionComesAfterTheOneInForceAndSaysSo() {
        var ids = ids("remark on assembly");
        assertTrue(ids.indexOf("bulletin-e47-issue-2") < ids.indexOf("bulletin-e47-issue-1"), ids::toString);
        assertEquals("SUPERSEDED", library.catalogue().byId("bulletin-e47-issue-1").orElseThrow().status());
        assertEquals("SUPERSEDED", library.catalogue().byId("pto-actuator-first").orElseThrow().status());
    }

    @Test
    void aDocumentIsFoundByTheCodeAndTheSymptomItSpeaksOf() {
        assertTrue(ids("4c17").contains("bulletin-e47-issue-2"), () -> ids("4c17").toString());
        assertTrue(ids("teach-in stops").containsAll(List.of("bulletin-e47-issue-2", "bulletin-e47-issue-1")),
                () -> ids("teach-in stops").toString());
    }

    @Test
    void aTitleIsFoundByTheBeginningsOfItsWords() {
        var catalogue = library.catalogue();
        assertEquals(NOTE, Titles.find(catalogue, "fre inst learn", 5).get(0).id());
        assertEquals("renew-pto-actuator", Titles.find(catalogue, "renew-pto-actuator", 5).get(0).id());
        assertEquals(List.of(), Titles.find(catalogue, "zzqx", 5));
        assertEquals(List.of(), Titles.find(catalogue, "!!", 5));
        assertEquals(5, Titles.find(catalogue, "", 5).size());
    }

    private static List<String> why(String text, Row row) {
        return index.passages(Query.of(text), List.of(row)).get(0).why();
    }

    private static List<String> ids(String text) {
        return find(text).hits().stream().map(hit -> hit.row().id()).toList();
    }

    private static Results find(String text) {
        return index.find(Query.of(text));
    }
}
