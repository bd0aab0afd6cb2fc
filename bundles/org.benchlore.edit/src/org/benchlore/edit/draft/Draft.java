// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.draft;

import java.nio.file.Path;
import java.time.Instant;

/**
 * What was being written when the program ended without saving it.
 *
 * @param path path of the element's file below the library
 * @param title what people call the element
 * @param when when the draft was written
 * @param base what became of the file it was made from
 * @param file where the draft lies
 */
public record Draft(String path, String title, Instant when, Base base, Path file) {

    /** What became of the file a draft was made from. */
    public enum Base {
        /** It is as it was: the draft can be saved as it is. */
        SAME,
        /** There was none: the element is new. */
        NEW,
        /** It was changed since: the restored session asks about each field. */
        CHANGED,
        /** It is gone. */
        GONE
    }
}
