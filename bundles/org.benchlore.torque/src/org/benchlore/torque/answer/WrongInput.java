// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import java.util.Objects;
import java.util.function.Supplier;

/** An input that cannot be used: which one, and in one plain sentence why and what is right. */
public final class WrongInput extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    private final Field field;

    WrongInput(Field field, String sentence) {
        super(sentence);
        this.field = Objects.requireNonNull(field);
    }

    /** Where the input stands. */
    public Field field() {
        return field;
    }

    /** Reads an input and notes where it stands if it cannot be used. */
    static <T> T at(Field field, Supplier<T> reader) {
        try {
            return reader.get();
        } catch (WrongInput e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new WrongInput(field, e.getMessage());
        }
    }

    static boolean isBlank(String text) {
        return text == null || text.isBlank();
    }
}
