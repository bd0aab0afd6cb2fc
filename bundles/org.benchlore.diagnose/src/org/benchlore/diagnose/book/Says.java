// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import org.benchlore.diagnose.chance.Share;
import org.benchlore.model.NoteStatus;

/** What a note adds, in words: a rate only where at least three cases stand behind it. */
final class Says {

    private Says() {
    }

    static String of(CaseNote note) {
        var proved = switch (note.status()) {
            case HELD -> "the fix held";
            case SEEN -> "seen to happen";
            case SUSPECTED -> "suspected";
            case UNSORTED -> "not sorted yet";
            case RULED_OUT -> "looked like this, was not";
            case SUPERSEDED -> "superseded";
        };
        return note.isTallied() && note.status() != NoteStatus.RULED_OUT ? proved + ", " + tally(note) : proved;
    }

    private static String tally(CaseNote note) {
        var since = note.since() == 0 ? "" : " since " + note.since();
        return note.count() >= Share.ENOUGH ? "seen in " + note.count() + " of about " + note.of() + " of ours" + since
                : "seen " + (note.count() == 1 ? "once" : note.count() + " times") + since;
    }
}
