// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The reader against a published list of codes that is not part of this program: Wal33D (Waleed Judah), 2024, MIT
 * licence, lines such as {@code B0001 - its meaning}. Skipped where the data is not at hand.
 */
class CodesAgainstDataTest {

    /** The letter's two bits are those of ISO 15031-6 and SAE J2012: P 00, C 01, B 10, U 11. */
    @ParameterizedTest
    @CsvSource({"p_codes.txt, P, 0, 7000", "c_codes.txt, C, 1, 400", "b_codes.txt, B, 2, 250",
            "u_codes.txt, U, 3, 1100"})
    void everyListedCodeHasOneKeyFromItsTextAndItsBytes(String file, String letter, int bits, int atLeast) {
        var codes = codes(file);
        assertTrue(codes.size() >= atLeast, codes.size() + " codes");
        for (var code : codes) {
            assertEquals(letter, code.substring(0, 1));
            var key = new CodeKey(CodeScheme.J2012, code);
            int value = bits << 14 | Integer.parseInt(code.substring(1), 16);
            var bytes = String.format(Locale.ROOT, "%02X %02X", value >> 8, value & 0xFF);
            for (var form : List.of(code, code.toLowerCase(Locale.ROOT), bytes, "0x" + bytes.replace(" ", ""))) {
                assertEquals(key, CodeReader.read(form).get(0).key(), form);
            }
        }
    }

    /** Each line as running text: the code in front is found, whatever its meaning is worded like. */
    @ParameterizedTest
    @CsvSource({"p_codes.txt", "c_codes.txt", "b_codes.txt", "u_codes.txt"})
    void everyListedCodeIsFoundInItsLine(String file) {
        for (var line : lines(file)) {
            var first = CodeReader.findIn(line).stream().findFirst();
            assertEquals(Optional.of(new CodeKey(CodeScheme.J2012, line.substring(0, 5))), first, line);
        }
    }

    private static List<String> codes(String file) {
        return lines(file).stream().map(line -> line.substring(0, line.indexOf(" - "))).toList();
    }

    private static List<String> lines(String file) {
        var path = Path.of(System.getProperty("benchlore.shared", ""), "data", "codes", file);
        assumeTrue(Files.isReadable(path), "Skipped: the open data codes/" + file + " is not at hand; set"
                + " -Dbenchlore.shared to the folder that holds data/codes");
        try {
            return Files.readAllLines(path, StandardCharsets.UTF_8).stream().filter(line -> !line.isBlank()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
