// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue.Stamp;

/** The files of a library folder. Links are not followed, hidden folders and the media are passed over. */
final class LibraryFiles {

    /** The folder below the library that holds the lock, and copies of what was reviewed; no elements. */
    static final String OWN_FOLDER = ".benchlore";

    private static final String MEDIA = "media";

    private LibraryFiles() {
    }

    /** Lists the library's files with their stamps, by path. */
    static SortedMap<String, Stamp> list(Path root) throws IOException {
        var found = new TreeMap<String, Stamp>();
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                return isPassedOver(root, folder) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                var name = file.getFileName().toString();
                if (attributes.isRegularFile() && name.endsWith(Kind.ENDING) && !name.startsWith(".")) {
                    found.put(path(root, file), stamp(attributes));
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException failure) throws IOException {
                if (file.equals(root)) {
                    throw failure;
                }
                return FileVisitResult.CONTINUE;
            }
        });
        return found;
    }

    static Stamp stamp(Path file) throws IOException {
        return stamp(Files.readAttributes(file, BasicFileAttributes.class));
    }

    private static Stamp stamp(BasicFileAttributes attributes) {
        return new Stamp(attributes.size(), attributes.lastModifiedTime().to(TimeUnit.NANOSECONDS));
    }

    private static boolean isPassedOver(Path root, Path folder) {
        if (folder.equals(root)) {
            return false;
        }
        var name = folder.getFileName().toString();
        return name.startsWith(".") || folder.getParent().equals(root) && name.equals(MEDIA);
    }

    private static String path(Path root, Path file) {
        return root.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
    }
}
