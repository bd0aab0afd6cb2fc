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
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
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
    private static final int VERSION = 5;
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
        writeAll(out, entries, CatalogueFile::writeEntry);
        bytes.write(Hash.of(bytes.toByteArray()).getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        AtomicFile.write(file, bytes.toByteArray());
    }

    private static SortedMap<String, Entry> read(DataInputStream in) throws IOException {
        var entries = new TreeMap<String, Entry>();
        if (in.readInt() == MAGIC && in.readInt() == VERSION) {
            for (var entry : readAll(in, CatalogueFile::readEntry)) {
                entries.put(entry.path(), entry);
            }
        }
        return entries;
    }

    private static void writeEntry(DataOutputStream out, Entry entry) throws IOException {
        text(out, entry.path());
        out.writeLong(entry.stamp().size());
        out.writeLong(entry.stamp().modified());
        text(out, entry.hash());
        writeAll(out, entry.problems(), CatalogueFile::writeProblem);
        writeAll(out, entry.row().stream().toList(), CatalogueFile::writeRow);
    }

    private static Entry readEntry(DataInputStream in) throws IOException {
        var path = text(in);
        var stamp = new Stamp(in.readLong(), in.readLong());
        var hash = text(in);
        var problems = readAll(in, input -> readProblem(input, path));
        var row = readAll(in, input -> readRow(input, path)).stream().findFirst();
        return new Entry(path, stamp, hash, row, problems);
    }

    private static void writeProblem(DataOutputStream out, FileProblem problem) throws IOException {
        out.writeInt(problem.line());
        text(out, problem.reason());
        text(out, problem.severity().name());
    }

    private static FileProblem readProblem(DataInputStream in, String path) throws IOException {
        return new FileProblem(path, in.readInt(), text(in), FileProblem.Severity.valueOf(text(in)));
    }

    private static void writeRow(DataOutputStream out, Row row) throws IOException {
        text(out, row.id());
        text(out, row.kind().name());
        text(out, row.title());
        text(out, row.status());
        text(out, row.date().map(LocalDate::toString).orElse(""));
        out.writeBoolean(row.invented());
        writeAll(out, row.machines(), CatalogueFile::address);
        writeAll(out, row.components(), CatalogueFile::address);
        writeAll(out, row.codes(), CatalogueFile::text);
        writeAll(out, row.numbers(), CatalogueFile::text);
        writeAll(out, row.symptoms(), CatalogueFile::text);
        writeAll(out, row.cause().stream().toList(), CatalogueFile::address);
        writeAll(out, row.references(), CatalogueFile::address);
        writeAll(out, row.innerIds(), CatalogueFile::text);
        writeAll(out, row.job().stream().toList(), CatalogueFile::writeJob);
        out.writeInt(row.naming());
    }

    private static Row readRow(DataInputStream in, String path) throws IOException {
        var address = new Address(path, text(in));
        var kind = Kind.valueOf(text(in));
        var title = text(in);
        var status = text(in);
        var date = Optional.of(text(in)).filter(day -> !day.isEmpty()).map(LocalDate::parse);
        return new Row(address, kind, title, status, date, in.readBoolean(),
                readAll(in, CatalogueFile::address), readAll(in, CatalogueFile::address),
                readAll(in, CatalogueFile::text), readAll(in, CatalogueFile::text), readAll(in, CatalogueFile::text),
                readAll(in, CatalogueFile::address).stream().findFirst(), readAll(in, CatalogueFile::address),
                Set.copyOf(readAll(in, CatalogueFile::text)), readAll(in, CatalogueFile::readJob).stream().findFirst(),
                in.readInt());
    }

    private static void writeJob(DataOutputStream out, Row.JobFacts job) throws IOException {
        writeAll(out, job.unit().stream().toList(), CatalogueFile::address);
        writeAll(out, job.done(), CatalogueFile::address);
        writeAll(out, job.renewed(), CatalogueFile::address);
        writeAll(out, job.left(), CatalogueFile::address);
        text(out, job.meter());
        writeAll(out, job.comebackOf().stream().toList(), CatalogueFile::address);
        text(out, job.comebackReason());
    }

    private static Row.JobFacts readJob(DataInputStream in) throws IOException {
        return new Row.JobFacts(readAll(in, CatalogueFile::address).stream().findFirst(),
                readAll(in, CatalogueFile::address), readAll(in, CatalogueFile::address),
                readAll(in, CatalogueFile::address), text(in),
                readAll(in, CatalogueFile::address).stream().findFirst(), text(in));
    }

    private static void address(DataOutputStream out, Address address) throws IOException {
        text(out, address.path());
        text(out, address.id());
    }

    private static Address address(DataInputStream in) throws IOException {
        return new Address(text(in), text(in));
    }

    private static void text(DataOutputStream out, String text) throws IOException {
        var bytes = text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static String text(DataInputStream in) throws IOException {
        return new String(in.readNBytes(in.readInt()), java.nio.charset.StandardCharsets.UTF_8);
    }

    private interface Writer<T> {
        void write(DataOutputStream out, T value) throws IOException;
    }

    private interface Reader<T> {
        T read(DataInputStream in) throws IOException;
    }

    private static <T> void writeAll(DataOutputStream out, Collection<T> values, Writer<T> writer) throws IOException {
        out.writeInt(values.size());
        for (var value : values) {
            writer.write(out, value);
        }
    }

    private static <T> List<T> readAll(DataInputStream in, Reader<T> reader) throws IOException {
        int size = in.readInt();
        var values = new ArrayList<T>();
        for (int i = 0; i < size; i++) {
            values.add(reader.read(in));
        }
        return List.copyOf(values);
    }
}
