// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.review;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The packs that were made of a library, one line each in {@code .benchlore/packs.tsv}: day, title, where it was written,
 * procedures, with tabs between them and commas between the procedures. Who withdraws a procedure learns from it who
 * still has it on paper. A line that cannot be read is passed over.
 */
public final class PackRegister {

    private static final int COLUMNS = 4;

    private final Path file;

    private PackRegister(Path file) {
        this.file = file;
    }

    /** Returns the register of a library; it need not exist yet. */
    public static PackRegister in(Path libraryFolder) {
        return new PackRegister(libraryFolder.resolve(".benchlore").resolve("packs.tsv"));
    }

    /**
     * Writes a pack down behind the others.
     *
     * @param entry the pack
     * @throws IOException if the library's folder cannot be written
     */
    public void record(PackEntry entry) throws IOException {
        var procedures = String.join(",", entry.procedures().stream().map(PackRegister::cell)
                .map(text -> text.replace(',', ' ')).toList());
        var line = String.join("\t", entry.on().toString(), cell(entry.title()), cell(entry.out()), procedures) + "\n";
        Files.createDirectories(file.getParent());
        Files.writeString(file, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    private static String cell(String text) {
        return text == null ? "" : text.replaceAll("\\s+", " ").strip();
    }

    /**
     * Returns the packs that carry a procedure.
     *
     * @param procedureId id of a procedure
     * @return the packs, oldest first; empty as well where the register cannot be read
     */
    public List<PackEntry> carrying(String procedureId) {
        if (!Files.exists(file)) {
            return List.of();
        }
        try {
            return new String(Files.readAllBytes(file), StandardCharsets.UTF_8).lines().flatMap(PackRegister::entry)
                    .filter(entry -> entry.carries(procedureId)).toList();
        } catch (IOException e) {
            System.getLogger(PackRegister.class.getName()).log(System.Logger.Level.WARNING,
                    file + " cannot be read: which packs were made is not known", e);
            return List.of();
        }
    }

    private static Stream<PackEntry> entry(String line) {
        var cells = line.split("\t", -1);
        if (cells.length != COLUMNS) {
            return Stream.empty();
        }
        var procedures = Stream.of(cells[COLUMNS - 1].split(",")).map(String::strip).filter(id -> !id.isEmpty()).toList();
        return day(cells[0]).map(on -> new PackEntry(on, cells[1], cells[2], procedures)).stream();
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
