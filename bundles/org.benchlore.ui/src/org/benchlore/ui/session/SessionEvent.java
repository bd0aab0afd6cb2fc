// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import org.benchlore.store.Changes;

/** What happened to the window's library. */
public sealed interface SessionEvent {

    /**
     * A library was opened, perhaps in place of another one.
     *
     * @param now the library
     */
    record LibraryOpened(Opened now) implements SessionEvent {
    }

    /**
     * Files of the library were changed and taken in.
     *
     * @param now the library
     * @param changes which files
     */
    record LibraryChanged(Opened now, Changes changes) implements SessionEvent {
    }

    /** The library was closed. */
    record LibraryClosed() implements SessionEvent {
    }
}
