// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Row;

/** Where a file is and where it belongs. */
final class FilePlace {

    private FilePlace() {
    }

    /** The address of a file's element; of a file that cannot be read, its name stands for the id. */
    static Address of(Entry entry) {
        return entry.row().map(Row::address).orElseGet(() -> new Address(entry.path(),
                entry.path().substring(entry.path().lastIndexOf('/') + 1).replace(Kind.ENDING, "")));
    }

    static Optional<String> wrongFolder(Row row) {
        try {
            var expected = row.kind().path(row.id());
            return expected.equals(row.path()) ? Optional.empty() : Optional.of("the file belongs at " + expected + ": move it there");
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }
}
