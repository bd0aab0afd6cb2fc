// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.compare.Words;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Turns what a person types into a field into the model's value, or refuses it with the model's plain sentence. */
public final class FieldText {

    private FieldText() {
    }

    /**
     * Reads one value of a field.
     *
     * @param field an attribute of the model
     * @param typed what was typed; characters that no file can hold are left out
     * @return the value, or empty if nothing was typed
     * @throws IllegalArgumentException with a plain sentence if it is no value of this field
     */
    public static Optional<Object> read(EAttribute field, String typed) {
        boolean isLong = field.getEAttributeType() == Literals.LONG_TEXT;
        var text = isLong ? clean(typed) : clean(typed).replaceAll("\\s+", " ").strip();
        if (text.isBlank()) {
            return Optional.empty();
        }
        if (field.getEAttributeType() instanceof EEnum words) {
            return Optional.of(word(words, text));
        }
        if (field.getEAttributeType().getInstanceClass() == boolean.class) {
            return Optional.of(yesOrNo(text));
        }
        return Optional.of(EcoreUtil.createFromString(field.getEAttributeType(), text));
    }

    /**
     * Says what is wrong with what was typed.
     *
     * @param field an attribute of the model
     * @param typed what was typed
     * @return a plain sentence, or empty if it is a value of this field or nothing
     */
    public static Optional<String> problem(EAttribute field, String typed) {
        try {
            read(field, typed);
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    private static Object word(EEnum words, String text) {
        var wanted = text.toUpperCase(Locale.ROOT).replace(' ', '_');
        return words.getELiterals().stream().filter(word -> word.getName().equals(wanted)).findFirst()
                .map(EEnumLiteral::getInstance).orElseThrow(() -> new IllegalArgumentException("'" + text
                        + "' is not one of the words for this: choose one of " + words.getELiterals().stream()
                                .map(word -> word.getName().toLowerCase(Locale.ROOT).replace('_', ' '))
                                .collect(Collectors.joining(", "))));
    }

    private static Boolean yesOrNo(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> throw new IllegalArgumentException("'" + text + "' is neither yes nor no: write one of them");
        };
    }

    /** XML 1.0, section 2.2, names the characters that a file can hold; line ends become plain line feeds. */
    static String clean(String text) {
        var clean = new StringBuilder();
        text.replace("\r\n", "\n").replace('\r', '\n').codePoints().filter(FieldText::isHeldByXml)
                .forEach(clean::appendCodePoint);
        return clean.toString();
    }

    private static boolean isHeldByXml(int character) {
        return character == '\t' || character == '\n' || character >= 0x20 && character <= 0xd7ff
                || character >= 0xe000 && character <= 0xfffd || character >= 0x10000;
    }

    static String label(EAttribute field) {
        return new Words().field(field);
    }
}
