// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.zip.ZipInputStream;

import org.benchlore.store.Hash;
import org.benchlore.store.LibraryException;

/**
 * The user's own copy of the demonstration library that the program carries. A copy in which nobody wrote is renewed
 * with the program; one in which somebody wrote is left alone.
 */
final class Demonstration {

    private static final String CARRIED = "demonstration.zip";
    private static final String OWN_FOLDER = ".benchlore";
    private static final String ORIGIN = "origin";

    private final Path folder;

    Demonstration(Path folder) {
        this.folder = folder;
    }

    Path folder() throws LibraryException {
        try {
            var carried = carried();
            if (isMissing() || isOutdated(carried) && isUntouched()) {
                copy(carried);
            }
            return folder;
        } catch (IOException e) {
            throw new LibraryException("The demonstration library cannot be copied to " + folder
                    + ": check the permissions and the free space", e);
        }
    }

    private static byte[] carried() throws IOException {
        try (var stream = Demonstration.class.getResourceAsStream(CARRIED)) {
            if (stream == null) {
                throw new IOException("The program does not carry its demonstration library");
            }
            return stream.readAllBytes();
        }
    }

    private boolean isMissing() {
        return !Files.exists(folder.resolve("shop.xmi"));
    }

    private boolean isOutdated(byte[] carried) throws IOException {
        return origin().isEmpty() || !origin().get(0).equals(Hash.of(carried));
    }

    private boolean isUntouched() throws IOException {
        return origin().size() == 2 && origin().get(1).equals(sum(folder));
    }

    private List<String> origin() throws IOException {
        var file = folder.resolve(OWN_FOLDER).resolve(ORIGIN);
        return Files.exists(file) ? Files.readAllLines(file) : List.of();
    }

    private void copy(byte[] carried) throws IOException {
        Files.createDirectories(folder.getParent());
        var fresh = folder.resolveSibling(folder.getFileName() + "-" + UUID.randomUUID());
        unpack(carried, fresh);
        var origin = Files.createDirectories(fresh.resolve(OWN_FOLDER)).resolve(ORIGIN);
        Files.write(origin, List.of(Hash.of(carried), sum(fresh)));
        delete(folder);
        Files.move(fresh, folder);
    }

    private static void unpack(byte[] carried, Path target) throws IOException {
        try (var zip = new ZipInputStream(new ByteArrayInputStream(carried))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                var file = target.resolve(entry.getName()).normalize();
                if (!file.startsWith(target)) {
                    throw new IOException("An entry leads out of the folder: " + entry.getName());
                }
                if (entry.isDirectory()) {
                    Files.createDirectories(file);
                } else {
                    Files.createDirectories(file.getParent());
                    Files.write(file, zip.readAllBytes());
                }
            }
        }
    }

    /** Sum over every file but the program's own. */
    private static String sum(Path root) throws IOException {
        var sums = new ByteArrayOutputStream();
        try (var files = Files.walk(root)) {
            for (var file : files.filter(Files::isRegularFile).sorted().toList()) {
                var name = root.relativize(file).toString();
                if (!name.startsWith(OWN_FOLDER)) {
                    sums.write((name + " " + Hash.of(Files.readAllBytes(file)) + "\n").getBytes(StandardCharsets.UTF_8));
                }
            }
        }
        return Hash.of(sums.toByteArray());
    }

    private static void delete(Path root) throws IOException {
        if (!Files.exists(root)) {
            return;
        }
        try (var files = Files.walk(root)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
