// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts that nobody writes on purpose: none makes the reader throw, none takes long. */
class CodesHostileTest {
    private static final List<String> PIECES = List.of("P0841", "P08", "SPN", "spn 520192", "FMI", "fmi31", "0x",
            "$", "-", "–", "−", ":", "/", ".", ",", " ", "  ", "\t", "\n", "(", ")", "[", "]", "{", "\"", "„", "»", "code ",
            "DTC", "status", "type", "OC", "CM", "x", "h", "h", "0", "7F", "31", "32", "524288", "999999999", "O", "I",
            "l", "p", "C", "b", "U", "face", "E47", "\u0000", "\u00AD", "\u200B", "\uFEFF", "\uD83D", "\uDE00",
            "\uD83D\uDE00", "０８", "Ｐ", "٧", "ß", "İ", "\uFDFA", "½", "²", "\\", "*", "+", "?", "^", "|", "#");
    private static final long LONGEST_NANOS = 500_000_000L;

    /** The slowest is held to half a second: what takes a millisecond may be held up by a busy machine. */
    @Test
    void aHundredThousandOddTextsAreReadWithoutFailingOrDelay() {
        var random = new Random(64);
        int read = 0;
        int found = 0;
        long slowest = 0;
        for (int i = 0; i < 100_000; i++) {
            var text = odd(random);
            long start = System.nanoTime();
            read += assertDoesNotThrow(() -> CodeReader.read(text), text).size();
            found += assertDoesNotThrow(() -> CodeReader.findIn(text), text).size();
            slowest = Math.max(slowest, System.nanoTime() - start);
        }
        assertTrue(read > 10_000 && found > 5_000, read + " readings, " + found + " found");
        assertTrue(slowest < LONGEST_NANOS, slowest + " ns");
    }

    @Test
    void everyReadingHasAKeyThatReadsBackInItsScheme() {
        var random = new Random(65);
        for (int i = 0; i < 10_000; i++) {
            var text = odd(random);
            for (var reading : CodeReader.read(text)) {
                var again = CodeReader.read(reading.key().text(), reading.key().scheme());
                assertTrue(again.stream().anyMatch(other -> other.key().equals(reading.key())),
                        text + " gives " + reading.key());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"P", "P0841 ", "9", "SPN ", "FMI 3 ", "(", "\uD83D\uDE00", "-", "\uFDFA"})
    void tenThousandCharactersAreNoOneCode(String unit) {
        var text = unit.repeat(10_000 / unit.length());
        assertEquals(List.of(), CodeReader.read(text));
        assertTrue(CodeReader.problem(text).orElseThrow().contains("too long"));
    }

    /** Half of the texts from pieces of codes, half from any characters; one in a hundred is long. */
    private static String odd(Random random) {
        int length = random.nextInt(100) == 0 ? random.nextInt(400) : random.nextInt(9);
        var text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.append(random.nextBoolean() ? PIECES.get(random.nextInt(PIECES.size())) : piece(random));
        }
        return text.toString();
    }

    private static String piece(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> String.valueOf((char) random.nextInt(0x10000));
            case 1 -> String.valueOf((char) (' ' + random.nextInt(95)));
            default -> PIECES.get(random.nextInt(16));
        };
    }
}
