// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.benchlore.model.Component;
import org.benchlore.model.ComebackReason;
import org.benchlore.model.Glossary;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.TopElement;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The demonstration library holds what a shop gathers in eight years, says that it is invented, and was written text by
 * text. The figures are the library's own aims: there is no source outside for them.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemonstrationContentTest {

    /** Runs of so many words are compared: shorter ones are shared by any two people of one trade. */
    private static final int RUN = 5;
    /** From this share of the shorter text's runs on, two texts count as one that was stamped out. */
    private static final double NEAR_IDENTICAL = 0.6;
    /** Data types of the model that hold words and not quantities, dates or money. */
    private static final Set<String> WORDS = Set.of("EString", "LongText");

    private final Path folder = Path.of(System.getProperty("benchlore.root"), "procedures");
    private Library library;

    @BeforeAll
    void open(@TempDir Path cache) throws Exception {
        library = Library.open(folder, cache, new NullProgressMonitor());
    }

    @AfterAll
    void close() {
        library.close();
    }

    @ParameterizedTest
    @CsvSource({"MACHINE, 8", "UNIT, 25", "PROCEDURE, 60", "NOTE, 150", "JOB, 200", "PART, 250", "TOOL, 80", "SUPPLY, 40",
        "CODE, 200", "DOCUMENT, 30"})
    void itHoldsAtLeastSoManyOfAKind(Kind kind, int least) {
        var count = library.catalogue().rows(kind).count();
        assertTrue(count >= least, count + " of kind " + kind);
    }

    @Test
    void theGlossaryHasFourHundredEntries() {
        var glossary = (Glossary) library.top("glossary").orElseThrow();
        assertTrue(glossary.getEntries().size() >= 400, glossary.getEntries().size() + " entries");
    }

    @Test
    void itHasTwentyFiveDrawingsAndEachIsShownSomewhere() throws IOException {
        try (var files = Files.list(folder.resolve("media"))) {
            var drawings = files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".svg")).toList();
            assertTrue(drawings.size() >= 25, drawings.size() + " drawings");
            var everything = sources();
            assertEquals(List.of(), drawings.stream().filter(name -> !everything.contains("file=\"" + name + "\"")).toList());
        }
    }

    private String sources() throws IOException {
        var all = new StringBuilder();
        for (var row : library.catalogue().rows().toList()) {
            all.append(Files.readString(folder.resolve(row.path())));
        }
        return all.toString();
    }

    @Test
    void twoMachinesAreWrittenDownToTheComponentAndTheOthersInOutline() {
        var sizes = elements(Kind.MACHINE).map(Machine.class::cast)
                .collect(Collectors.toMap(Machine::getId, DemonstrationContentTest::components));
        assertEquals(Set.of("dravholm-hl26", "quillfen-s6"), sizes.entrySet().stream()
                .filter(size -> size.getValue() >= 80).map(size -> size.getKey()).collect(Collectors.toSet()));
        assertTrue(sizes.values().stream().allMatch(size -> size >= 10), sizes.toString());
    }

    private static long components(Machine machine) {
        return contents(machine).filter(Component.class::isInstance).count();
    }

    @Test
    void everyElementSaysThatItIsInvented() {
        assertEquals(List.of(), paths(library.catalogue().rows(), row -> !row.invented()));
    }

    @Test
    void everyMachineSaysThatItIsNotForUse() {
        assertEquals(List.of(), elements(Kind.MACHINE).map(Machine.class::cast)
                .filter(machine -> !words(machine).contains("not for use on a real machine")).map(Machine::getId).toList());
    }

    @Test
    void notesAndJobsSpanEightYears() {
        var years = Stream.concat(library.catalogue().rows(Kind.NOTE), library.catalogue().rows(Kind.JOB))
                .flatMap(row -> row.date().stream()).map(day -> day.getYear()).collect(Collectors.toSet());
        assertEquals(IntStream.rangeClosed(2018, 2026).boxed().collect(Collectors.toSet()), years);
    }

    /** As in a real shop, sorting lags behind writing. */
    @Test
    void twoNotesOfFiveLieUnsorted() {
        var all = library.catalogue().rows(Kind.NOTE).toList();
        var unsorted = all.stream().filter(row -> row.status().equals(NoteStatus.UNSORTED.getLiteral())).count();
        assertTrue(unsorted * 5 >= all.size() * 2L, unsorted + " of " + all.size());
    }

    @ParameterizedTest
    @CsvSource({"NOTE, RULED_OUT", "NOTE, SUPERSEDED", "PROCEDURE, WITHDRAWN", "DOCUMENT, SUPERSEDED", "PART, SUPERSEDED"})
    void whatTurnedOutWrongStaysInTheBook(Kind kind, String status) {
        assertTrue(library.catalogue().rows(kind).anyMatch(row -> row.status().equals(status)), kind + " " + status);
    }

    @Test
    void aPartLeftInCameBack() {
        assertTrue(elements(Kind.JOB).map(JobRecord.class::cast)
                .anyMatch(job -> job.getComebackReason() == ComebackReason.PART_LEFT_IN && job.getComebackOf() != null));
    }

    /** Every pair of notes and jobs is compared: nobody writes the same half page twice. */
    @Test
    void noTwoTextsAreNearlyTheSame() {
        var runs = new TreeMap<String, Set<String>>();
        Stream.of(Kind.NOTE, Kind.JOB).flatMap(this::elements).forEach(one -> runs.put(one.getId(), runs(words(one))));
        var ids = List.copyOf(runs.keySet());
        var alike = new ArrayList<String>();
        for (var i = 0; i < ids.size(); i++) {
            for (var other : ids.subList(i + 1, ids.size())) {
                var share = share(runs.get(ids.get(i)), runs.get(other));
                if (share >= NEAR_IDENTICAL) {
                    alike.add(ids.get(i) + " and " + other + ": " + Math.round(100 * share) + " %");
                }
            }
        }
        assertEquals(List.of(), alike);
    }

    /** Shared runs as a share of the shorter text's. */
    private static double share(Set<String> one, Set<String> other) {
        var smaller = one.size() <= other.size() ? one : other;
        var larger = smaller == one ? other : one;
        return (double) smaller.stream().filter(larger::contains).count() / smaller.size();
    }

    /** The runs of five words of a text, the whole text if it is shorter. */
    private static Set<String> runs(String text) {
        var words = List.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"));
        if (words.size() <= RUN) {
            return Set.of(String.join(" ", words));
        }
        return IntStream.rangeClosed(0, words.size() - RUN)
                .mapToObj(at -> String.join(" ", words.subList(at, at + RUN))).collect(Collectors.toSet());
    }

    /** Everything that somebody wrote in words in an element, the ids left out. */
    private static String words(TopElement top) {
        return Stream.concat(Stream.of(top), contents(top)).flatMap(one -> one.eClass().getEAllAttributes().stream()
                .filter(attribute -> WORDS.contains(attribute.getEAttributeType().getName()))
                .map(one::eGet).flatMap(DemonstrationContentTest::each)).collect(Collectors.joining(" "));
    }

    private static Stream<String> each(Object value) {
        return value instanceof Collection<?> many ? many.stream().map(Object::toString) : Stream.ofNullable((String) value);
    }

    private static Stream<EObject> contents(EObject top) {
        var all = new ArrayList<EObject>();
        for (TreeIterator<EObject> each = top.eAllContents(); each.hasNext();) {
            all.add(each.next());
        }
        return all.stream();
    }

    private Stream<TopElement> elements(Kind kind) {
        return library.catalogue().rows(kind).flatMap(row -> library.top(row.id()).stream());
    }

    private static List<String> paths(Stream<Row> rows, Predicate<Row> wanted) {
        return rows.filter(wanted).map(Row::path).toList();
    }
}
