// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import org.benchlore.model.Kind;
import org.benchlore.model.Signal;
import org.eclipse.emf.common.util.Enumerator;

/** The model's literals and kinds in plain English words, lower case, as they stand within a line. */
public final class Labels {

    /** What is said of everything that was invented for demonstration. */
    public static final String INVENTED = Texts.INVENTED;

    private static final Map<Enumerator, String> WORDS = together(together(WorkWords.WORDS, RecordWords.WORDS),
            WeightWords.WORDS);
    private static final String NOT_RECORDED = "NOT_RECORDED";

    private Labels() {
    }

    private static Map<Enumerator, String> together(Map<Enumerator, String> first, Map<Enumerator, String> second) {
        var all = new HashMap<>(first);
        all.putAll(second);
        return Map.copyOf(all);
    }

    /**
     * Returns a literal in words.
     *
     * @param literal a literal of the model, such as {@code NoteStatus.HELD}
     * @return its words, such as 'the fix held'; 'not recorded' for NOT_RECORDED and for null
     */
    public static String of(Enumerator literal) {
        if (literal == null || literal.getLiteral().equals(NOT_RECORDED)) {
            return Texts.NOT_RECORDED;
        }
        return WORDS.getOrDefault(literal, literal.getLiteral().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    /**
     * Returns several literals in words.
     *
     * @param literals literals of the model
     * @return their words with commas; 'not recorded' where there are none
     */
    public static String of(Collection<? extends Enumerator> literals) {
        return literals.isEmpty() ? Texts.NOT_RECORDED
                : literals.stream().map(Labels::of).collect(Collectors.joining(", "));
    }

    /**
     * Returns a kind in words.
     *
     * @param kind a kind
     * @return a noun, such as 'field note'
     */
    public static String of(Kind kind) {
        return switch (kind) {
            case NOTE -> "field note";
            case CODE -> "fault code";
            case JOB -> "job record";
            case PROCEDURE, MACHINE, UNIT, PART, TOOL, SUPPLY, DOCUMENT, GLOSSARY, SHOP -> kind.word();
        };
    }

    /**
     * Returns the plural of a kind in words.
     *
     * @param kind a kind
     * @return a noun, such as 'field notes'
     */
    public static String plural(Kind kind) {
        return switch (kind) {
            case SUPPLY -> "supplies";
            case GLOSSARY -> "glossaries";
            default -> of(kind) + "s";
        };
    }

    /**
     * Returns the signal word of a hazard panel.
     *
     * @param signal a signal word, or null
     * @return DANGER, WARNING, CAUTION or NOTICE; HAZARD where none was recorded
     */
    public static String signal(Signal signal) {
        return signal == null || signal == Signal.NOT_RECORDED ? "HAZARD" : signal.getLiteral();
    }

    /**
     * Returns words with a capital, as a heading or a label begins.
     *
     * @param words words, may be empty
     * @return the same words, the first letter a capital
     */
    public static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
