// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;

/** Writes what a command makes to a file that is not there yet. */
final class NewFile {

    private NewFile() {
    }

    /** Does nothing where no file was named. */
    static void write(Path file, Supplier<String> text) throws BadArgument {
        if (file == null) {
            return;
        }
        if (Files.exists(file)) {
            throw new BadArgument("'" + file + "' is there already and is not written over: name a new file.");
        }
        try {
            Files.writeString(file, text.get());
        } catch (IOException e) {
            throw new BadArgument("'" + file + "' cannot be written: name a file in a folder that is there and may be written"
                    + " to.");
        }
    }
}
