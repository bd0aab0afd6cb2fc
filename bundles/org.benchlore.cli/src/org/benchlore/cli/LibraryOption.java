// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.nio.file.Path;

import picocli.CommandLine.Option;

/** Options that every command over a library has. */
final class LibraryOption {

    @Option(names = "--library", paramLabel = "DIR",
            description = "Folder of the library (default: your own copy of the demonstration library).")
    private Path folder;

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    /** Returns the folder, or null for the demonstration library. */
    Path folder() {
        return folder;
    }

    boolean isJson() {
        return json;
    }
}
