// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds the rooms to the arrows and to the rules of DEVELOPERS.md. */
class ArchitectureTest {

    private static final Pattern OWN = Pattern.compile("\\borg\\.benchlore\\.([a-z]+)\\b");
    private static final Pattern WINDOW = Pattern.compile("org\\.eclipse\\.(swt|jface|ui|e4)\\b");
    private static final Pattern OSGI_ONLY = Pattern.compile("org\\.osgi\\.|org\\.eclipse\\.core\\.runtime\\.(?!"
            + "IProgressMonitor;|NullProgressMonitor;|SubMonitor;|OperationCanceledException;)"
            + "|org\\.eclipse\\.core\\.(jobs|resources)");
    private static final Pattern STATIC_STATE = Pattern.compile(
            "^\\s+(?:(?:public|protected|private|volatile)\\s+)*static\\s+(?!final\\b|class\\b|record\\b|enum\\b"
                    + "|interface\\b|sealed\\b|<)(?:volatile\\s+)?[\\w.<>\\[\\], ?]+\\s+\\w+\\s*(=|;).*");
    private static final Pattern MUTABLE_CONSTANT = Pattern.compile(
            "static final [\\w<>., ?]+ \\w+ = new (ArrayList|HashMap|HashSet|LinkedHash|TreeMap|TreeSet|Concurrent|Atomic).*");
    private static final Pattern GET_DEFAULT = Pattern.compile("static \\w+ (getDefault|getInstance)\\(");
    private static final int LONGEST_FILE = 500;

    private final Rooms rooms = new Rooms();

    @Test
    void everyRoomIsOneOfTheDesign() throws IOException {
        assertTrue(rooms.folders().size() >= 10, () -> "too few rooms were found");
        rooms.folders().keySet().forEach(room -> assertTrue(Rooms.isKnown(room), room));
    }

    @Test
    void manifestsPointDownOnly() throws IOException {
        var wrong = new ArrayList<String>();
        rooms.folders().forEach((room, folder) -> {
            var attributes = Rooms.manifest(folder).getMainAttributes();
            for (var header : List.of("Require-Bundle", "Import-Package", "Fragment-Host")) {
                var value = attributes.getValue(header);
                wrongArrows(room, value == null ? "" : value).forEach(arrow -> wrong.add(header + ": " + arrow));
            }
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    void sourcesPointDownOnly() throws IOException {
        assertEquals(List.of(), findings((room, line) -> line.startsWith("import ")
                && !wrongArrows(room, line).isEmpty()));
    }

    private static List<String> wrongArrows(String room, String text) {
        var wrong = new ArrayList<String>();
        var matcher = OWN.matcher(text);
        while (matcher.find()) {
            var other = matcher.group(1);
            if (!other.equals(room) && !Rooms.below(room).contains(other)) {
                wrong.add(room + " -> " + other);
            }
        }
        return wrong;
    }

    @Test
    void headlessRoomsKnowNoWindow() throws IOException {
        rooms.folders().forEach((room, folder) -> {
            var required = Rooms.manifest(folder).getMainAttributes().getValue("Require-Bundle");
            assertTrue(Rooms.hasWindow(room) || required == null || !WINDOW.matcher(required).find(), room);
        });
        assertEquals(List.of(), findings((room, line) -> !Rooms.hasWindow(room) && WINDOW.matcher(line).find()));
    }

    @Test
    void headlessRoomsCallNothingThatNeedsOsgi() throws IOException {
        assertEquals(List.of(), findings((room, line) -> !Rooms.hasWindow(room) && line.startsWith("import ")
                && OSGI_ONLY.matcher(line).find()));
    }

    @Test
    void thereIsNoStaticState() throws IOException {
        var wrong = new ArrayList<String>();
        for (var folder : rooms.folders().values()) {
            for (var file : Rooms.sources(folder)) {
                boolean messages = Rooms.lines(file).anyMatch(line -> line.contains("extends NLS"));
                Rooms.lines(file).filter(line -> STATIC_STATE.matcher(line).matches() && !messages
                        || MUTABLE_CONSTANT.matcher(line).find() || GET_DEFAULT.matcher(line).find())
                        .forEach(line -> wrong.add(file.getFileName() + ": " + line.strip()));
            }
        }
        assertEquals(List.of(), wrong);
    }

    @ParameterizedTest
    @ValueSource(strings = {"    static int count;", "    private static String last = null;",
        "    public static volatile List<String> all = List.of();", "    private static Map<String, Path> known;"})
    void theTestOfStaticStateSeesIt(String line) {
        assertTrue(STATIC_STATE.matcher(line).matches(), line);
    }

    @ParameterizedTest
    @ValueSource(strings = {"    static int count() {", "    private static final int MOST = 3;",
        "    static Stream<String> all() { return a = b; }", "    private static <T> void x(T a) {"})
    void theTestOfStaticStateSeesOnlyState(String line) {
        assertTrue(!STATIC_STATE.matcher(line).matches(), line);
    }

    @Test
    void noFileIsTooLongAndEveryFileNamesItsLicence() throws IOException {
        var wrong = new ArrayList<String>();
        for (var folder : rooms.folders().values()) {
            for (var file : Rooms.sources(folder)) {
                var lines = Rooms.lines(file).toList();
                if (lines.size() > LONGEST_FILE || !lines.get(0).equals("// SPDX-License-Identifier: EPL-2.0")) {
                    wrong.add(file.getFileName() + ", " + lines.size() + " lines");
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void failuresAreLoggedNotPrinted() throws IOException {
        assertEquals(List.of(), findings((room, line) -> line.contains("printStackTrace")
                || !room.equals("cli") && line.contains("System.out")));
    }

    @Test
    void publicTypesAreDocumented() throws IOException {
        var type = Pattern.compile("^public (?:final |sealed |abstract |non-sealed )*(?:class|record|enum|interface) .*");
        var wrong = new ArrayList<String>();
        for (var folder : rooms.folders().values()) {
            for (var file : Rooms.sources(folder)) {
                var lines = Rooms.lines(file).toList();
                for (int i = 1; i < lines.size(); i++) {
                    if (type.matcher(lines.get(i)).matches() && !isDocumented(lines, i)) {
                        wrong.add(file.getFileName().toString());
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    private static boolean isDocumented(List<String> lines, int line) {
        int above = line - 1;
        while (above > 0 && (lines.get(above).startsWith("@") || lines.get(above).startsWith("    "))) {
            above--;
        }
        return lines.get(above).endsWith("*/");
    }

    @Test
    void generatedCodeStandsInItsOwnFolderAndIsNotKept() throws IOException {
        var ignored = Rooms.lines(rooms.root().resolve(".gitignore")).toList();
        assertTrue(ignored.contains("src-gen/"));
        assertEquals(List.of(), findings((room, line) -> line.contains("@generated")));
    }

    /** Without the file that names its folder of tests, the build runs none of them and says nothing. */
    @Test
    void everyRoomWithTestsHasThemRun() throws IOException {
        var silent = new ArrayList<String>();
        for (var room : rooms.folders().entrySet()) {
            var classPath = room.getValue().resolve(".classpath");
            if (Files.isDirectory(room.getValue().resolve("src_test"))
                    && (!Files.exists(classPath) || !Files.readString(classPath).contains("src_test"))) {
                silent.add(room.getKey());
            }
        }
        assertEquals(List.of(), silent);
    }

    private List<String> findings(BiPredicate<String, String> isWrong) throws IOException {
        var wrong = new ArrayList<String>();
        for (var room : rooms.folders().entrySet()) {
            for (Path file : Rooms.sources(room.getValue())) {
                Rooms.lines(file).filter(line -> isWrong.test(room.getKey(), line))
                        .forEach(line -> wrong.add(file.getFileName() + ": " + line.strip()));
            }
        }
        return wrong;
    }
}
