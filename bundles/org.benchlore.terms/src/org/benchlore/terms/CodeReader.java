// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Reads fault codes in every written form. No text whatever makes it throw, and the time grows with the length of the
 * text only.
 */
public final class CodeReader {
    private CodeReader() {
    }

    /**
     * All plausible readings of a text that holds one code, the most likely first; empty if there is none, and
     * {@link #problem} then says why.
     */
    public static List<CodeReading> read(String text) {
        return findings(text).readings();
    }

    /** The readings in a known scheme; NOT_RECORDED gives all. A maker's own code is taken as it stands. */
    public static List<CodeReading> read(String text, CodeScheme scheme) {
        if (scheme == CodeScheme.NOT_RECORDED) {
            return read(text);
        }
        if (scheme == CodeScheme.MAKER && isUsable(text)) {
            var found = new Findings();
            MakerForms.readKnown(CodeText.normal(text), found);
            if (!found.isEmpty()) {
                return found.readings();
            }
        }
        Predicate<CodeReading> fits = reading -> reading.key().scheme() == scheme;
        return read(text).stream().filter(fits).toList();
    }

    /** One plain sentence on what is wrong with a text; empty if it reads as a code without a remark against it. */
    public static Optional<String> problem(String text) {
        var found = findings(text);
        if (found.problem().isPresent() || !found.isEmpty()) {
            return found.problem();
        }
        return Optional.of("There is no code in this text: write for example P0841-64 or SPN 520192 FMI 31.");
    }

    /** The codes that stand in running text, in order, each once. Plain numbers count only after 'code' or 'DTC'. */
    public static List<CodeKey> findIn(String freeText) {
        return CodeFinder.findIn(freeText == null ? "" : freeText);
    }

    /**
     * The key of a text in a search index: lower case, no separators. A text with a letter or SPN in front comes to
     * its canonical form first ({@code spn 520192/31} gives {@code spn520192fmi31}); any other is only stripped.
     */
    public static String indexForm(String text) {
        return certain(text).map(CodeKey::indexForm).orElseGet(() -> stripped(text));
    }

    /** As {@link #indexForm} without the failure type or FMI. */
    public static String baseForm(String text) {
        return certain(text).map(CodeKey::baseForm).orElseGet(() -> stripped(text));
    }

    private static String stripped(String text) {
        return text == null ? "" : Hex.stripped(MakerForms.unmarked(text.strip().toUpperCase(Locale.ROOT)));
    }

    private static Optional<CodeKey> certain(String text) {
        if (!isUsable(text)) {
            return Optional.empty();
        }
        var normal = CodeText.normal(text);
        var found = new Findings();
        if (SpnForms.fits(normal)) {
            SpnForms.read(normal, found);
        } else {
            letters(normal, found);
        }
        return found.readings().stream().findFirst().map(CodeReading::key);
    }

    private static boolean isUsable(String text) {
        return text != null && !text.isBlank() && text.length() <= CodeText.LONGEST;
    }

    private static Findings findings(String text) {
        var found = new Findings();
        if (isUsable(text)) {
            collect(CodeText.normal(text), found);
        } else if (text != null && !text.isBlank()) {
            found.problem("The text is too long for one code: enter one code at a time.");
        }
        return found;
    }

    private static void collect(String text, Findings found) {
        if (SpnForms.fits(text)) {
            SpnForms.read(text, found);
        } else {
            codeOrNumber(text, found);
        }
        if (found.isEmpty() && found.problem().isEmpty()) {
            picked(text, found);
        }
        if (found.isEmpty() && SpnForms.fits(text)) {
            SpnForms.cannotBeRead(found);
        }
    }

    private static void codeOrNumber(String text, Findings found) {
        letters(text, found);
        if (found.isEmpty()) {
            spaced(text, found);
        }
        if (found.isEmpty()) {
            plainNumbers(text, found);
        }
        if (found.isEmpty() && CodeFinder.findIn(text).size() > 1) {
            picked(text, found);
        }
        if (found.isEmpty()) {
            LetterForms.readOdd(text, found);
        }
        if (found.isEmpty()) {
            MakerForms.read(text, found);
        }
    }

    /** The codes within other words, or several in one text; each is canonical, so it reads at once. */
    private static void picked(String text, Findings found) {
        var keys = CodeFinder.findIn(text);
        keys.forEach(key -> read(key.text(), key.scheme()).stream().limit(1).forEach(reading ->
                found.add(key.scheme(), key.text(), "Picked out of the text. " + reading.remark())));
        if (keys.size() > 1) {
            found.problem("There are " + keys.size() + " codes in this text: enter one code at a time.");
        }
    }

    private static void letters(String text, Findings found) {
        LetterForms.readExact(text, found);
        if (found.isEmpty()) {
            LetterForms.readRepaired(text, found);
        }
    }

    private static void spaced(String text, Findings found) {
        LetterForms.readSpaced(text, found);
        if (!found.isEmpty()) {
            MakerForms.read(text, found);
        }
    }

    private static void plainNumbers(String text, Findings found) {
        if (SpnForms.bareComesFirst(text)) {
            SpnForms.readBare(text, found);
        }
        NumberForms.read(text, found);
        SpnForms.readBare(text, found);
        SpnForms.explainBare(text, found);
        if (!found.isEmpty() && !found.has(CodeScheme.MAKER)) {
            MakerForms.read(text, found);
        }
    }
}
