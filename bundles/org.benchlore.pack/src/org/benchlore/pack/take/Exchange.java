// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.take;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.benchlore.pack.Folders;
import org.benchlore.store.AtomicFile;
import org.benchlore.store.Hash;

/**
 * Changes many files of a library, all or none. The new files are written into a folder beside, the old ones kept there, a
 * journal says what is meant; then each file is moved into its place. What was broken off is put back by the next one who
 * looks. The folder of the last whole exchange stays as the way back.
 */
final class Exchange {

    private static final String OWN = ".benchlore";
    private static final String PREFIX = "take-";
    private static final String JOURNAL = "journal.tsv";
    private static final String DONE = "done";
    private static final String NONE = "-";

    private final Path root;
    private final Path own;

    Exchange(Path root) {
        this.root = root;
        this.own = root.resolve(OWN);
    }

    /**
     * A file to be changed.
     *
     * @param path path below the library
     * @param before its sum now, empty if it is not there
     * @param after its new content, empty to delete it
     */
    record Change(String path, Optional<String> before, Optional<byte[]> after) {
    }

    private record Line(String path, String before, String after) {
    }

    /** Puts back whatever was broken off; tells whether there was anything. */
    boolean recover() throws IOException {
        boolean isFound = false;
        for (var folder : folders()) {
            if (!Files.exists(folder.resolve(DONE))) {
                if (Files.exists(folder.resolve(JOURNAL))) {
                    putBack(folder, lines(folder));
                }
                Folders.delete(folder);
                isFound = true;
            }
        }
        return isFound;
    }

    /** Changes all or none. */
    void run(List<Change> changes) throws IOException {
        var folder = Files.createDirectories(own.resolve(PREFIX + UUID.randomUUID()));
        var lines = new ArrayList<Line>();
        try {
            for (var change : changes) {
                lines.add(stage(folder, change));
            }
            AtomicFile.write(folder.resolve(JOURNAL), text(lines));
        } catch (IOException | RuntimeException e) {
            Folders.delete(folder);
            throw e;
        }
        try {
            for (var line : lines) {
                move(folder, line);
            }
            AtomicFile.write(folder.resolve(DONE), new byte[0]);
        } catch (IOException | RuntimeException e) {
            putBack(folder, lines);
            Folders.delete(folder);
            throw e;
        }
        forgetOthers(folder);
    }

    private Line stage(Path folder, Change change) throws IOException {
        var file = inside(change.path());
        if (!sumOf(file).equals(change.before())) {
            throw new IOException(change.path() + " was changed meanwhile");
        }
        if (change.before().isPresent()) {
            AtomicFile.write(folder.resolve("old").resolve(change.path()), Files.readAllBytes(file));
        }
        if (change.after().isPresent()) {
            AtomicFile.write(folder.resolve("new").resolve(change.path()), change.after().get());
        }
        return new Line(change.path(), change.before().orElse(NONE), change.after().map(Hash::of).orElse(NONE));
    }

    private void move(Path folder, Line line) throws IOException {
        var file = inside(line.path());
        if (!sumOf(file).orElse(NONE).equals(line.before())) {
            throw new IOException(line.path() + " was changed meanwhile");
        }
        if (line.after().equals(NONE)) {
            Files.delete(file);
        } else {
            Files.createDirectories(file.getParent());
            Files.move(folder.resolve("new").resolve(line.path()), file, StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** A folder of the library that is a link would lead elsewhere: what lies behind it is not written. */
    private Path inside(String path) throws IOException {
        var file = root;
        for (var part : path.split("/")) {
            file = file.resolve(part);
            if (Files.isSymbolicLink(file)) {
                throw new IOException(root.relativize(file) + " is a link, which is not followed");
            }
        }
        if (!file.normalize().equals(file) || !file.startsWith(root)) {
            throw new IOException(path + " leads out of the library");
        }
        return file;
    }

    private static Optional<String> sumOf(Path file) throws IOException {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        return Optional.of(Hash.of(Files.readAllBytes(file)));
    }

    /** Only what still is as the exchange made it is put back; what somebody changed since stays. */
    private void putBack(Path folder, List<Line> lines) throws IOException {
        for (var line : lines) {
            var file = inside(line.path());
            boolean isOurs = sumOf(file).orElse(NONE).equals(line.after()) && !line.after().equals(line.before());
            if (isOurs && line.before().equals(NONE)) {
                Files.delete(file);
            } else if (isOurs) {
                AtomicFile.write(file, Files.readAllBytes(folder.resolve("old").resolve(line.path())));
            }
        }
    }

    private void forgetOthers(Path last) throws IOException {
        for (var folder : folders()) {
            if (!folder.equals(last)) {
                Folders.delete(folder);
            }
        }
    }

    /**
     * Returns what takes the last exchange back.
     *
     * @return the changes, empty if there is none to take back
     */
    Optional<List<Change>> back() throws IOException {
        for (var folder : folders()) {
            if (Files.exists(folder.resolve(DONE))) {
                return Optional.of(lines(folder).stream().map(line -> back(folder, line)).toList());
            }
        }
        return Optional.empty();
    }

    private static Change back(Path folder, Line line) {
        try {
            return new Change(line.path(), Optional.of(line.after()).filter(sum -> !sum.equals(NONE)), line.before().equals(NONE)
                    ? Optional.empty() : Optional.of(Files.readAllBytes(folder.resolve("old").resolve(line.path()))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Forgets the way back. */
    void forget() throws IOException {
        for (var folder : folders()) {
            Folders.delete(folder);
        }
    }

    private List<Path> folders() throws IOException {
        if (!Files.isDirectory(own)) {
            return List.of();
        }
        try (var files = Files.list(own)) {
            return files.filter(file -> file.getFileName().toString().startsWith(PREFIX) && Files.isDirectory(file)).sorted().toList();
        }
    }

    private static byte[] text(List<Line> lines) {
        var text = new StringBuilder();
        lines.forEach(line -> text.append(line.before()).append('\t').append(line.after()).append('\t').append(line.path()).append('\n'));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static List<Line> lines(Path folder) throws IOException {
        var found = new ArrayList<Line>();
        for (var line : Files.readAllLines(folder.resolve(JOURNAL))) {
            var words = line.split("\t", -1);
            found.add(new Line(words[2], words[0], words[1]));
        }
        return found;
    }
}
