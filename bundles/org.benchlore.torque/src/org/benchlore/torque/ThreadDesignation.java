// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.Objects;
import java.util.Optional;

/**
 * A thread as it is written on a drawing or a bag: {@code M10}, {@code M10×1.25-8.8}, {@code 3/8-16 UNC},
 * {@code 7/16-20}, {@code M10x1 LH}. A metric size without a pitch is the coarse one.
 *
 * @param text the text as entered, trimmed
 * @param thread the thread
 * @param propertyClass the class if one stands beside the thread
 * @param leftHanded whether it says so
 */
public record ThreadDesignation(String text, BoltThread thread, Optional<PropertyClass> propertyClass,
        boolean leftHanded) {

    public ThreadDesignation {
        Objects.requireNonNull(text);
        Objects.requireNonNull(thread);
        Objects.requireNonNull(propertyClass);
    }

    /**
     * Reads a designation. A tolerance such as 6g or 2A may stand in it; a length may not.
     *
     * @throws IllegalArgumentException with one plain sentence that names what is wrong and shows a good one
     */
    public static ThreadDesignation parse(String text) {
        return new ThreadReader().read(text);
    }

    /** The text as entered. */
    @Override
    public String toString() {
        return text;
    }
}
