// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Catalogue.Stamp;

/**
 * Keeps the catalogue between two starts in a file of the user's cache. It is never the only place of anything: a
 * file that is damaged, older or missing counts as empty and the library is read again.
 */
final class CatalogueFile {

    private static final int MAGIC = 0x424c4341;
    private static final int VERSION = 6;
    private static final int HASH_LENGTH = 64;

    private final Path file;

    CatalogueFile(Path file) {
        this.file = file;
    }

    SortedMap<String, Entry> read() {
        try {
            var bytes = Files.readAllBytes(file);
            var body = java.util.Arrays.copyOf(bytes, Math.max(0, bytes.length - HASH_LENGTH));
            var sum = new String(bytes, body.length, bytes.length - body.length, java.nio.charset.StandardCharsets.US_ASCII);
            if (Hash.of(body).equals(sum)) {
                return read(new DataInputStream(new ByteArrayInputStream(body)));
            }
        } catch (IOException | IllegalArgumentException e) {
            System.getLogger(CatalogueFile.class.getName())
                    .log(System.Logger.Level.DEBUG, "No catalogue is kept, the library is read again", e);
        }
        return new TreeMap<>();
    }

    void write(Collection<Entry> entries) throws IOException {
        var bytes = new ByteArrayOutputStream();
        var out = new DataOutputStream(bytes);
        out.writeInt(MAGIC);
        out.writeInt(VERSION);
        Packed.writeAll(out, entries, CatalogueFile::writeEntry);
        bytes.write(Hash.of(bytes.toByteArray()).getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        AtomicFile.write(file, bytes.toByteArray());
    }

    private static SortedMap<String, Entry> read(DataInputStream in) throws IOException {
        var entries = new TreeMap<String, Entry>();
        if (in.readInt() == MAGIC && in.readInt() == VERSION) {
            for (var entry : Packed.readAll(in, CatalogueFile::readEntry)) {
                entries.put(entry.path(), entry);
            }
        }
        return entries;
    }

    private static void writeEntry(DataOutputStream out, Entry entry) throws IOException {
        Packed.text(out, entry.path());
        out.writeLong(entry.stamp().size());
        out.writeLong(entry.stamp().modified());
        Packed.text(out, entry.hash());
        Packed.writeAll(out, entry.problems(), CatalogueFile::writeProblem);
        Packed.writeAll(out, entry.row().stream().toList(), CatalogueFile::writeRow);
    }

    private static Entry readEntry(DataInputStream in) throws IOException {
        var path = Packed.text(in);
        var stamp = new Stamp(in.readLong(), in.readLong());
        var hash = Packed.text(in);
        var problems = Packed.readAll(in, input -> readProblem(input, path));
        var row = Packed.readAll(in, input -> readRow(input, path)).stream().findFirst();
        return new Entry(path, stamp, hash, row, problems);
    }

    private static void writeProblem(DataOutputStream out, FileProblem problem) throws IOException {
        out.writeInt(problem.line());
        Packed.text(out, problem.reason());
        Packed.text(out, problem.severity().name());
    }

    private static FileProblem readProblem(DataInputStream in, String path) throws IOException {
        return new FileProblem(path, in.readInt(), Packed.text(in), FileProblem.Severity.valueOf(Packed.text(in)));
    }

    private static void writeRow(DataOutputStream out, Row row) throws IOException {
        Packed.text(out, row.id());
        Packed.text(out, row.kind().name());
        Packed.text(out, row.title());
        Packed.text(out, row.status());
        Packed.text(out, row.date().map(LocalDate::toString).orElse(""));
        out.writeBoolean(row.invented());
        Packed.writeAll(out, row.machines(), Packed::address);
        Packed.writeAll(out, row.components(), Packed::address);
        Packed.writeAll(out, row.codes(), Packed::text);
        Packed.writeAll(out, row.numbers(), Packed::text);
        Packed.writeAll(out, row.symptoms(), Packed::text);
        Packed.writeAll(out, row.cause().stream().toList(), Packed::address);
        Packed.writeAll(out, row.references(), Packed::address);
        Packed.writeAll(out, row.innerIds(), Packed::text);
        Packed.writeAll(out, row.special().stream().toList(), PackedFacts::write);
        out.writeInt(row.naming());
    }

    private static Row readRow(DataInputStream in, String path) throws IOException {
        var address = new Address(path, Packed.text(in));
        var kind = Kind.valueOf(Packed.text(in));
        var title = Packed.text(in);
        var status = Packed.text(in);
        var date = Optional.of(Packed.text(in)).filter(day -> !day.isEmpty()).map(LocalDate::parse);
        return new Row(address, kind, title, status, date, in.readBoolean(),
                Packed.readAll(in, Packed::address), Packed.readAll(in, Packed::address),
                Packed.readAll(in, Packed::text), Packed.readAll(in, Packed::text), Packed.readAll(in, Packed::text),
                Packed.readAll(in, Packed::address).stream().findFirst(), Packed.readAll(in, Packed::address),
                Set.copyOf(Packed.readAll(in, Packed::text)), Packed.readAll(in, PackedFacts::read).stream().findFirst(),
                in.readInt());
    }
}
