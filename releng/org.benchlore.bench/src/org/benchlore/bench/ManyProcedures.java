// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** A copy of a library with so many procedures more, each a copy of one of its own under another id. */
public final class ManyProcedures {

    private static final String PROCEDURES = "procedures";
    private static final String ENDING = ".xmi";

    private final Path from;
    private final Path to;

    /**
     * Prepares a copy.
     *
     * @param from a library
     * @param to an empty folder
     */
    public ManyProcedures(Path from, Path to) {
        this.from = from;
        this.to = to;
    }

    /**
     * Writes the library.
     *
     * @param count how many procedures it has then
     * @throws IOException if it cannot be read or written
     * @throws BenchException if there is no library
     */
    public void write(int count) throws IOException, BenchException {
        if (!Files.isRegularFile(from.resolve("shop.xmi"))) {
            throw new BenchException(from + " is no library: give the folder that holds shop.xmi");
        }
        copyAll();
        var own = own();
        for (int i = own.size(); i < count; i++) {
            var file = own.get(i % own.size());
            var id = file.getFileName().toString().replace(ENDING, "");
            var other = String.format(Locale.ROOT, "%s-%05d", id, i);
            var text = Files.readString(file).replaceFirst("(?m)^(\\s+id=)\"" + id + "\"", "$1\"" + other + "\"");
            Files.writeString(to.resolve(PROCEDURES).resolve(other + ENDING), text);
        }
    }

    private List<Path> own() throws IOException {
        try (var files = Files.list(from.resolve(PROCEDURES))) {
            return files.filter(file -> file.toString().endsWith(ENDING)).sorted().toList();
        }
    }

    private void copyAll() throws IOException {
        try (var files = Files.walk(from)) {
            for (var file : files.filter(path -> !path.toString().contains(".benchlore")).toList()) {
                var target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }
}
