// SPDX-License-Identifier: EPL-2.0
package org.benchlore.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Optional;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArgumentsTest {

    @ParameterizedTest
    @CsvSource({"/books/shop, /books/shop", "-option value, ", "-option value /books/shop, /books/shop", "-flag, ", "'', ",
        "/books/shop -option value, /books/shop"})
    void firstArgumentThatBelongsToNoOptionIsTheLibrary(String line, String folder) {
        assertEquals(Optional.ofNullable(folder).map(Path::of), Arguments.libraryFolder(line.split(" ")));
    }
}
