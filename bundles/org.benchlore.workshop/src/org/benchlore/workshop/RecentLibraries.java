// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Remembers the libraries that were worked in. That it cannot is no reason to stop. */
final class RecentLibraries {

    private static final int MOST = 10;

    private final Path file;

    RecentLibraries(Path file) {
        this.file = file;
    }

    List<Path> all() {
        var folders = new ArrayList<Path>();
        for (var line : lines()) {
            try {
                var folder = Path.of(line);
                if (!line.isBlank() && Files.isDirectory(folder)) {
                    folders.add(folder);
                }
            } catch (InvalidPathException e) {
                log("A remembered folder is none", e);
            }
        }
        return List.copyOf(folders);
    }

    void add(Path folder) {
        var folders = new ArrayList<>(all());
        folders.remove(folder);
        folders.add(0, folder);
        try {
            Files.createDirectories(file.getParent());
            Files.write(file, folders.stream().limit(MOST).map(Path::toString).toList());
        } catch (IOException e) {
            log("Recent libraries cannot be remembered", e);
        }
    }

    private List<String> lines() {
        try {
            return Files.exists(file) ? Files.readAllLines(file) : List.of();
        } catch (IOException e) {
            log("Recent libraries cannot be read", e);
            return List.of();
        }
    }

    private static void log(String what, Exception e) {
        System.getLogger(RecentLibraries.class.getName()).log(System.Logger.Level.DEBUG, what, e);
    }
}
