// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.FieldNote;

class NearDuplicateNotesTest extends Mirror {

    NearDuplicateNotesTest() {
        super("near-duplicate-notes", "notes/2023/note-2023-prop-pin-can-be-put-in-wrong-f5ra.xmi",
                b -> b.copyTo("notes/2026/note-2026-prop-pin-again-aaaa.xmi", "note-2026-prop-pin-again-aaaa", FieldNote.class),
                "notes/2026/note-2026-prop-pin-again-aaaa.xmi#note-2026-prop-pin-again-aaaa",
                b -> b.copyTo("notes/2026/note-2026-prop-pin-again-aaaa.xmi", "note-2026-prop-pin-again-aaaa",
                        FieldNote.class).setTitle("Hook latch greased too thick"));
    }
}
