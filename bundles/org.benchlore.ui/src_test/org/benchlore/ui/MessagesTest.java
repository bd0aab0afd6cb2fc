// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every package that has words: its fields, its file and its code name the same keys. */
class MessagesTest {

    private static final Pattern FIELD = Pattern.compile("public static String (\\w+);");
    private static final Pattern USE = Pattern.compile("\\bMessages\\.(\\w+)");

    static Stream<Path> packages() throws IOException {
        var root = Path.of(System.getProperty("benchlore.root")).resolve("bundles");
        try (var ui = Files.walk(root.resolve("org.benchlore.ui/src"));
                var app = Files.walk(root.resolve("org.benchlore.app/src"))) {
            return Stream.concat(ui, app).filter(file -> file.endsWith("Messages.java")).map(Path::getParent).toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("packages")
    void fileHoldsExactlyTheKeysOfTheFields(Path folder) throws IOException {
        assertEquals(fields(folder), new TreeSet<>(file(folder).stringPropertyNames()));
    }

    @ParameterizedTest
    @MethodSource("packages")
    void codeUsesExactlyTheKeysOfTheFields(Path folder) throws IOException {
        var used = new TreeSet<String>();
        try (var files = Files.list(folder)) {
            for (var file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
                if (!file.endsWith("Messages.java")) {
                    USE.matcher(Files.readString(file)).results().forEach(use -> used.add(use.group(1)));
                }
            }
        }
        assertEquals(fields(folder), used);
    }

    @ParameterizedTest
    @MethodSource("packages")
    void noWordsAreEmpty(Path folder) throws IOException {
        assertFalse(file(folder).values().stream().anyMatch(words -> words.toString().isBlank()));
    }

    private static TreeSet<String> fields(Path folder) throws IOException {
        return FIELD.matcher(Files.readString(folder.resolve("Messages.java"))).results().map(field -> field.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Properties file(Path folder) throws IOException {
        var words = new Properties();
        try (var reader = Files.newBufferedReader(folder.resolve("messages.properties"))) {
            words.load(reader);
        }
        return words;
    }
}
