// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.benchlore.model.Kind;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
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

    private static Library library;
    private static SearchIndex index;

    @BeforeAll
    static void open() throws Exception {
        var demonstration = Path.of(System.getProperty("benchlore.root"), "procedures");
        library = Library.open(demonstration, folder.resolve("cache"), new NullProgressMonitor());
        index = SearchIndex.open(library, folder.resolve("index"), true, new NullProgressMonitor());
    }

    @AfterAll
    static void close() throws Exception {
        index.close();
        library.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"learning fails on a fresh install", "learning fails", "fails learning fresh install",
        "suspect hydraulic actuator", "4C17", "4c17", "0x4C17", "code 4C17", "learning fails 4c17",
        "Learning FAILS on a fresh inst"})
    void theNoteOfTheMomentOfNeedIsTheFirstHit(String text) {
        assertEquals(NOTE, first(text).row().id());
    }

    @ParameterizedTest
    @CsvSource({"SPN 520192 FMI 31", "520192/31", "spn520192 fmi31"})
    void aCodeIsFoundInItsOtherForms(String text) {
        assertTrue(find(text).hits().stream().limit(3).anyMatch(hit -> hit.row().id().equals(NOTE)));
    }

    @Test
    void aHitSaysWhyItIsOne() {
        assertEquals("in the title", first("learning fails on a fresh install").why().get(0));
        assertEquals("code 4c17", first("4C17").why().get(0));
    }

    @Test
    void theExcerptMarksWhatFits() {
        var hit = first("bench piston tilts");
        assertFalse(hit.marks().isEmpty());
        for (var mark : hit.marks()) {
            assertTrue(mark.start() >= 0 && mark.end() <= hit.excerpt().length() && mark.start() < mark.end());
        }
        assertFalse(hit.excerpt().contains("\n"));
    }

    @Test
    void theBeginningOfAWordIsEnough() {
        assertTrue(find("vibr").total() > 0);
        assertEquals(0, find("vibr ").hits().stream().filter(h -> h.why().toString().contains("begins")).count());
    }

    @Test
    void theKindNarrows() {
        var results = index.find(new Query("actuator", Optional.of(Kind.PART), Optional.empty(), 50));
        assertTrue(results.total() > 0);
        assertTrue(results.hits().stream().allMatch(hit -> hit.row().kind() == Kind.PART));
    }

    @Test
    void theMachineNarrowsButKeepsWhatIsForAllMachines() {
        var all = find("bearing").hits().stream().map(hit -> hit.row().machines()).flatMap(List::stream).toList();
        assertTrue(all.stream().anyMatch(machine -> machine.id().equals("quillfen-s6")));
        var results = index.find(new Query("bearing", Optional.empty(), Optional.of("dravholm-hl26"), 50));
        assertTrue(results.hits().stream().allMatch(hit -> hit.row().machines().isEmpty()
                || hit.row().machines().stream().anyMatch(machine -> machine.id().equals("dravholm-hl26"))));
    }

    @Test
    void whatDoesNotHoldEveryWordIsMarkedAsLoosened() {
        assertFalse(find("learning fails").loosened());
        var results = find("learning fails zzzzqq");
        assertTrue(results.loosened());
        assertEquals(NOTE, results.hits().get(0).row().id());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "zzzzqq", "\"", "*:*", "!!!"})
    void nothingIsFoundWithoutAFault(String text) {
        assertEquals(0, find(text).total());
    }

    @Test
    void theLimitHolds() {
        var results = index.find(new Query("the", Optional.empty(), Optional.empty(), 3));
        assertEquals(3, results.hits().size());
        assertTrue(results.total() > 3);
    }

    @Test
    void provedComesBeforeSuspectedBeforeRuledOut() {
        var statuses = List.of("HELD", "SEEN", "SUSPECTED", "UNSORTED", "RULED_OUT", "SUPERSEDED");
        var weights = statuses.stream().map(status -> Weights.of(row(status), library.top(NOTE).orElseThrow())).toList();
        assertEquals(weights.stream().sorted(java.util.Comparator.reverseOrder()).toList(), weights);
    }

    private static org.benchlore.store.Row row(String status) {
        var row = library.catalogue().byId(NOTE).orElseThrow();
        return new org.benchlore.store.Row(row.address(), row.kind(), row.title(), status, row.date(), true,
                List.of(), List.of(), List.of(), List.of(), Optional.empty(), List.of(), java.util.Set.of(),
                Optional.empty());
    }

    /** Operators, lone surrogates, very long words, control characters: fixed seed, so a failure can be repeated. */
    @Test
    void whateverIsTypedNothingThrows() {
        var random = new Random(20261125);
        var alphabet = "ab4c17 \"*?~^:()[]{}\\/+-!&|<>=#%_'.,;\u0000\n\t\u00e4\ud83d\ude00\ud800\u200f\u0130ANDORNOT";
        for (int i = 0; i < 3000; i++) {
            var text = new StringBuilder();
            int length = random.nextInt(i % 100 == 0 ? 3000 : 40);
            for (int c = 0; c < length; c++) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            assertTrue(find(text.toString()).total() >= 0);
        }
    }

    private static Results find(String text) {
        return index.find(Query.of(text));
    }

    private static Hit first(String text) {
        return find(text).hits().get(0);
    }
}
