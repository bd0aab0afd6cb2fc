// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.log;

import java.time.Instant;
import java.util.HashSet;

/**
 * One thing the program noted.
 *
 * @param time when
 * @param level how grave
 * @param source which part of the program
 * @param text what happened, in words
 * @param detail stack trace, or empty
 */
public record LogRecord(Instant time, Level level, String source, String text, String detail) {

    /** How grave a record is. */
    public enum Level {
        /** Something did not work. */
        ERROR,
        /** Something works less well than it should. */
        WARNING,
        /** Good to know. */
        INFO
    }

    /**
     * Writes out where a failure came from.
     *
     * @param cause a failure, or null
     * @return its stack trace and those of its causes, or empty
     */
    static String detail(Throwable cause) {
        var text = new StringBuilder();
        var seen = new HashSet<Throwable>();
        for (var one = cause; one != null && seen.add(one); one = one.getCause()) {
            text.append(text.isEmpty() ? "" : "Caused by: ").append(one).append('\n');
            for (var place : one.getStackTrace()) {
                text.append("    at ").append(place).append('\n');
            }
        }
        return text.toString();
    }

    /**
     * Writes the record as text.
     *
     * @return one line, and the lines of the detail
     */
    public String asText() {
        return time + " " + level + " " + source + ": " + text + (detail.isEmpty() ? "" : "\n" + detail.stripTrailing());
    }
}
