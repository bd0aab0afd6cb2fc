// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

/**
 * Something wrong with a file of the library, in a plain sentence.
 *
 * @param path path of the file below the library
 * @param line line in the file, 0 where it has none
 * @param reason what is wrong and what to do
 * @param severity how grave it is
 */
public record FileProblem(String path, int line, String reason, Severity severity) {

    /** How grave a problem of a file is. */
    public enum Severity {
        /** The file cannot be read at all and is set apart. */
        UNREADABLE,
        /** The file is shown, but something in it could not be read: it is never saved over. */
        READ_ONLY,
        /** The file is whole; it does not fit the rest of the library. */
        MISFIT
    }

    @Override
    public String toString() {
        return line > 0 ? path + ":" + line + ": " + reason : path + ": " + reason;
    }
}
