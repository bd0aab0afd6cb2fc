// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.FieldNote;

class NoteStatusUnfoundedTest extends Mirror {

    NoteStatusUnfoundedTest() {
        super("note-status-unfounded", "notes/2023/note-2023-prop-pin-can-be-put-in-wrong-f5ra.xmi",
                b -> { var note = (FieldNote) b.top(); note.setComponent(null); note.setFinding(null); },
                "note-2023-prop-pin-can-be-put-in-wrong-f5ra",
                b -> ((FieldNote) b.top()).setFinding(null));
    }
}
