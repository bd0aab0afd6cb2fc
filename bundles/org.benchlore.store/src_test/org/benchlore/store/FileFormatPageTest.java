// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.measure.Dimension;
import org.benchlore.measure.MeasureUnit;
import org.benchlore.measure.MeasureUnits;
import org.benchlore.model.BookPackage;
import org.benchlore.model.Kind;
import org.benchlore.store.FileProblem.Severity;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds docs/file-format.md to the program: its examples load, its messages are the real ones, nothing is left out. */
class FileFormatPageTest {

    private static final Pattern FILE = Pattern.compile("\\*\\*`([^`]+)`\\*\\*\n\n```xml\n(.*?)```", Pattern.DOTALL);
    private static final Pattern AS_TYPED = Pattern.compile("```xml as-typed\n(.*?)```", Pattern.DOTALL);
    private static final Pattern MISTAKE = Pattern.compile("\\| `([^`]+)` \\| (?:`([^`]+)`|nothing) \\| `([^`]+)` \\|");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");
    private static final String NOTE = "notes/2026/note-2026-oil-on-the-lining-is-the-seal-k4pd.xmi";
    private static final String TOOL = "tools/wrench-10-110.xmi";

    @TempDir
    Path folder;

    /** One change to the note of the page and what the page says of it. */
    record Mistake(Severity severity, String written, String instead, String reason) {

        boolean isSaidBy(FileProblem problem) {
            var words = reason.endsWith("…") ? reason.substring(0, reason.length() - 1) : reason;
            return problem.severity() == severity
                    && (reason.endsWith("…") ? problem.reason().startsWith(words) : problem.reason().equals(words));
        }
    }

    @Test
    void theFilesOfThePageAreALibraryWithoutAProblem() throws Exception {
        try (var library = open(files())) {
            assertEquals(List.of(), library.problems());
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyKindHasOneFileThatSaysItIsInvented(Kind kind) throws Exception {
        try (var library = open(files())) {
            var rows = library.catalogue().rows(kind).toList();
            assertEquals(1, rows.size());
            assertTrue(rows.get(0).invented());
        }
    }

    static Stream<String> paths() throws Exception {
        return files().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("paths")
    void everyFileStandsThereAsTheProgramSavesIt(String path) throws Exception {
        var shown = bytes(files().get(path));
        assertArrayEquals(shown, saved(path, shown));
    }

    @Test
    void whatIsTypedLooselyIsSavedAsTheFileBelow() throws Exception {
        var typed = AS_TYPED.matcher(page());
        assertTrue(typed.find());
        assertEquals(files().get(TOOL), new String(saved(TOOL, bytes(typed.group(1))), StandardCharsets.UTF_8));
    }

    static List<Mistake> mistakes() throws Exception {
        var headings = new EnumMap<Severity, String>(Map.of(Severity.READ_ONLY, "### Read-only",
                Severity.UNREADABLE, "### Set apart", Severity.MISFIT, "### Does not fit"));
        return headings.entrySet().stream().flatMap(heading -> MISTAKE.matcher(section(heading.getValue())).results()
                .map(row -> new Mistake(heading.getKey(), row.group(1), Optional.ofNullable(row.group(2)).orElse(""),
                        row.group(3)))).toList();
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void aMistakeIsReportedInTheWordsOfThePage(Mistake mistake) throws Exception {
        var files = files();
        var before = files.get(NOTE);
        assertTrue(before.contains(mistake.written), "the note holds what is changed");
        files.put(NOTE, before.replace(mistake.written, mistake.instead));
        try (var library = open(files)) {
            assertTrue(library.problems().stream().anyMatch(mistake::isSaidBy), () -> library.problems().toString());
            assertEquals(mistake.severity == Severity.MISFIT, library.file(NOTE).orElseThrow().isWhole());
        }
    }

    @ParameterizedTest
    @EnumSource(Severity.class)
    void thePageHasExamplesOfEveryGravity(Severity severity) throws Exception {
        assertTrue(mistakes().stream().filter(mistake -> mistake.severity == severity).count() >= 4);
    }

    @Test
    void theLineOfTheExampleMessageIsTheRealOne() throws Exception {
        var shown = Pattern.compile("`" + Pattern.quote(NOTE) + ":([0-9]+): 'statsu'").matcher(page());
        assertTrue(shown.find());
        var file = new BookFormat().read(NOTE, bytes(files().get(NOTE).replace("status=", "statsu=")));
        assertEquals(Integer.parseInt(shown.group(1)), file.problems().get(0).line());
    }

    static Stream<EClass> classes() {
        return classifiers(EClass.class);
    }

    @ParameterizedTest
    @MethodSource("classes")
    void theReferenceHasEveryFeatureWithFormAndType(EClass type) {
        var text = section("### " + type.getName());
        type.getEStructuralFeatures().forEach(feature -> assertTrue(text.contains(row(feature)),
                () -> "missing or different: " + row(feature)));
        assertEquals(type.getEStructuralFeatures().size(), text.lines().filter(line -> line.startsWith("| `")).count());
        type.getESuperTypes().forEach(base -> assertTrue(text.contains("Builds on [" + base.getName() + "]")));
    }

    static Stream<EEnum> enumerations() {
        return classifiers(EEnum.class);
    }

    @ParameterizedTest
    @MethodSource("enumerations")
    void theReferenceHasEveryEnumerationWithItsWordsInOrder(EEnum type) {
        var words = type.getELiterals().stream().map(EEnumLiteral::getLiteral)
                .map(literal -> "`" + literal + "`").collect(Collectors.joining(" "));
        assertTrue(section("### Enumerations").contains("| " + type.getName() + " | " + words + " |"), words);
    }

    static Stream<EDataType> valueTypes() {
        return classifiers(EDataType.class).filter(type -> !(type instanceof EEnum));
    }

    @ParameterizedTest
    @MethodSource("valueTypes")
    void everyTypeOfValueIsExplained(EDataType type) {
        assertTrue(section("### Values").contains("| `" + type.getName() + "` |"));
        assertTrue(section("### Types of values").contains("| `" + type.getName() + "` |"));
    }

    @ParameterizedTest
    @MethodSource("valueTypes")
    void theExamplesOfATypeAreReadAndItsCounterexamplesRefused(EDataType type) {
        var cells = section("### Values").lines().filter(line -> line.startsWith("| `" + type.getName() + "` |"))
                .findFirst().orElseThrow().split("\\|");
        var factory = BookPackage.eINSTANCE.getEFactoryInstance();
        codes(cells[2]).forEach(text -> assertEquals(text, factory.convertToString(type,
                factory.createFromString(type, text))));
        codes(cells[3]).forEach(text -> assertThrows(IllegalArgumentException.class,
                () -> factory.createFromString(type, text), text));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void theUnitsOfADimensionAreThoseThatAreRead(Dimension dimension) {
        var cells = section("### Values").lines().map(line -> line.split("\\|"))
                .filter(row -> row.length > 3 && isRowOf(dimension, row)).findFirst().orElseThrow();
        assertEquals(MeasureUnits.of(dimension).stream().map(MeasureUnit::symbol).collect(Collectors.toSet()),
                codes(cells[2]).collect(Collectors.toSet()));
        codes(cells[3]).forEach(spelling ->
                assertEquals(dimension, MeasureUnits.get(spelling).dimension(), spelling));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void theTableOfTheFolderGivesThePathOfEveryKind(Kind kind) {
        var path = kind.isSingle() ? kind.path(kind.word())
                : kind.path(kind.word() + "-2026-id").replace("2026/", "YEAR/").replace(kind.word() + "-2026-id", "ID");
        assertTrue(section("## The folder").contains("| " + kind.word() + " | `" + kind.type().getName() + "` | `" + path
                + "` |"), path);
    }

    private static boolean isRowOf(Dimension dimension, String[] row) {
        return row[1].strip().equalsIgnoreCase(dimension.name());
    }

    private static String row(EStructuralFeature feature) {
        var type = feature.getEType().getName().replaceAll("^E(String|Boolean|Int)$", "$1").replace("Boolean", "Bool");
        var shown = feature instanceof EReference
                ? "[" + type + "](#" + type.toLowerCase(Locale.ROOT) + ")" : type;
        return "| `" + feature.getName() + "` | " + form(feature) + (feature.isMany() ? " *" : "")
                + (feature.isRequired() ? " !" : "") + " | " + shown + " | ";
    }

    private static String form(EStructuralFeature feature) {
        if (feature instanceof EReference reference) {
            return reference.isContainment() ? "contained" : "reference";
        }
        return feature.isMany() || feature.getEType() == BookPackage.Literals.LONG_TEXT ? "child" : "attribute";
    }

    private static <T extends EClassifier> Stream<T> classifiers(Class<T> type) {
        return BookPackage.eINSTANCE.getEClassifiers().stream().filter(type::isInstance).map(type::cast);
    }

    private static Stream<String> codes(String cell) {
        return CODE.matcher(cell).results().map(found -> found.group(1));
    }

    /** The text from a heading to the next heading of the same or a higher level. */
    private static String section(String heading) {
        var next = "#{1," + heading.indexOf(' ') + "} ";
        var found = Pattern.compile("^" + Pattern.quote(heading) + "\n(.*?)(?=^" + next + "|\\z)",
                Pattern.DOTALL | Pattern.MULTILINE).matcher(page());
        assertTrue(found.find(), heading + " is missing");
        return found.group(1);
    }

    private static String page() {
        try {
            return Files.readString(Path.of(System.getProperty("benchlore.root"), "docs/file-format.md"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> files() throws Exception {
        var files = new TreeMap<String, String>();
        Matcher matcher = FILE.matcher(page());
        while (matcher.find()) {
            files.put(matcher.group(1), matcher.group(2));
        }
        return files;
    }

    private Library open(Map<String, String> files) throws Exception {
        for (var file : files.entrySet()) {
            var place = folder.resolve("library").resolve(file.getKey());
            Files.createDirectories(place.getParent());
            Files.writeString(place, file.getValue());
        }
        return Library.open(folder.resolve("library"), folder.resolve("cache"), new NullProgressMonitor());
    }

    private static byte[] saved(String path, byte[] bytes) {
        var format = new BookFormat();
        var file = format.read(path, bytes);
        assertTrue(file.isWhole(), () -> file.problems().toString());
        return format.write(path, file.root().orElseThrow());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
