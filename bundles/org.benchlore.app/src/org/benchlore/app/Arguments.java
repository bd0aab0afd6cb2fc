// SPDX-License-Identifier: EPL-2.0
package org.benchlore.app;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Reads the program's arguments. */
final class Arguments {

    private Arguments() {
    }

    /** Returns the first argument that is neither an option nor the value of one. */
    static Optional<Path> libraryFolder(String[] arguments) {
        for (int i = 0; i < arguments.length; i++) {
            if (isPlain(arguments[i]) && (i == 0 || isPlain(arguments[i - 1]))) {
                return path(arguments[i]);
            }
        }
        return Optional.empty();
    }

    private static boolean isPlain(String argument) {
        return !argument.isBlank() && !argument.startsWith("-");
    }

    private static Optional<Path> path(String argument) {
        try {
            return Optional.of(Path.of(argument).toAbsolutePath());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
