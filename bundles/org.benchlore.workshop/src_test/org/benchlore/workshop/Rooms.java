// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/** The rooms of this checkout as they lie on the disk, and the arrows that DEVELOPERS.md draws. */
final class Rooms {

    static final String PREFIX = "org.benchlore.";

    /** Who may use whom directly; what a room's room may use, it may use too. */
    private static final Map<String, List<String>> ARROWS = Map.ofEntries(
            Map.entry("app", List.of("ui")),
            Map.entry("ui", List.of("workshop")),
            Map.entry("cli", List.of("workshop")),
            Map.entry("workshop", List.of("pack", "share", "intake", "page", "check", "diagnose", "search", "edit")),
            Map.entry("pack", List.of("page", "check")),
            Map.entry("share", List.of("edit")),
            Map.entry("intake", List.of("edit", "terms")),
            Map.entry("page", List.of("plan", "diagnose")),
            Map.entry("check", List.of("edit", "plan", "terms")),
            Map.entry("diagnose", List.of("plan")),
            Map.entry("plan", List.of("evidence", "torque")),
            Map.entry("evidence", List.of("store", "terms")),
            Map.entry("search", List.of("store", "terms")),
            Map.entry("edit", List.of("store", "terms")),
            Map.entry("store", List.of("model")),
            Map.entry("model", List.of("measure")),
            Map.entry("torque", List.of("measure")),
            Map.entry("terms", List.of()),
            Map.entry("measure", List.of()));

    private final Path root = Path.of(System.getProperty("benchlore.root"));

    Path root() {
        return root;
    }

    /** Name of every room with its folder. */
    Map<String, Path> folders() throws IOException {
        var folders = new TreeMap<String, Path>();
        try (var bundles = Files.list(root.resolve("bundles"))) {
            bundles.filter(bundle -> Files.exists(bundle.resolve("META-INF/MANIFEST.MF")))
                    .forEach(bundle -> folders.put(bundle.getFileName().toString().substring(PREFIX.length()), bundle));
        }
        return folders;
    }

    static Manifest manifest(Path folder) {
        try (var stream = Files.newInputStream(folder.resolve("META-INF/MANIFEST.MF"))) {
            return new Manifest(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Java files of a room, hand-written and not tests. */
    static List<Path> sources(Path folder) throws IOException {
        try (var files = Files.walk(folder.resolve("src"))) {
            return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
        }
    }

    static boolean isKnown(String room) {
        return ARROWS.containsKey(room);
    }

    /** Every room that a room may use. */
    static Set<String> below(String room) {
        var found = new HashSet<String>();
        collect(room, found);
        return found;
    }

    private static void collect(String room, Set<String> found) {
        ARROWS.get(room).stream().filter(found::add).forEach(next -> collect(next, found));
    }

    static boolean hasWindow(String room) {
        return room.equals("ui") || room.equals("app");
    }

    static Stream<String> lines(Path file) {
        try {
            return Files.readAllLines(file).stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
