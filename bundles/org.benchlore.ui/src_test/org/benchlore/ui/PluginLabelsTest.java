// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** plugin.xml names only labels and icons that are there. */
class PluginLabelsTest {

    private static final Pattern LABEL = Pattern.compile("\"%([\\w.]+)\"");
    private static final Pattern ICON = Pattern.compile("icons/[\\w.]+");

    private static Path bundle(String name) {
        return Path.of(System.getProperty("benchlore.root"), "bundles", name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"org.benchlore.ui", "org.benchlore.app"})
    void labelsAreExactlyThoseOfTheFile(String name) throws IOException {
        var words = new Properties();
        try (var reader = Files.newBufferedReader(bundle(name).resolve("plugin.properties"))) {
            words.load(reader);
        }
        var used = LABEL.matcher(Files.readString(bundle(name).resolve("plugin.xml"))).results()
                .map(label -> label.group(1)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(words.stringPropertyNames()), used);
    }

    @ParameterizedTest
    @ValueSource(strings = {"org.benchlore.ui", "org.benchlore.app"})
    void iconsExist(String name) throws IOException {
        var icons = ICON.matcher(Files.readString(bundle(name).resolve("plugin.xml"))).results()
                .map(icon -> icon.group()).distinct().toList();
        assertTrue(!icons.isEmpty() && icons.stream().allMatch(icon -> Files.exists(bundle(name).resolve(icon))),
                icons::toString);
    }
}
