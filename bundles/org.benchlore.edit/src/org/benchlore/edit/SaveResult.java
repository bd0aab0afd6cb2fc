// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import org.benchlore.store.LoadedFile;

/** What came of saving a session. */
public sealed interface SaveResult {

    /**
     * The file was written, and the session goes on from it.
     *
     * @param file the file as it is now
     */
    record Saved(LoadedFile file) implements SaveResult {
    }

    /**
     * Nothing was written: the file is not what the session was made from.
     *
     * @param conflict what happened
     */
    record Stopped(Conflict conflict) implements SaveResult {
    }
}
