// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.NullProgressMonitor;

/** The demonstration library, opened once and only read; its facts are kept in a temporary folder. */
final class Demo {

    static final Library LIBRARY = open();

    private Demo() {
    }

    private static Library open() {
        try {
            var cache = Files.createTempDirectory("benchlore-check");
            cache.toFile().deleteOnExit();
            return Library.open(Path.of(System.getProperty("benchlore.root"), "procedures"), cache, new NullProgressMonitor());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (LibraryException e) {
            throw new IllegalStateException(e);
        }
    }
}
