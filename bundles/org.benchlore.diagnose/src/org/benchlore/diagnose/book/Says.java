// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Optional;

import org.benchlore.diagnose.book.Family.Relative;
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
        return on(note.relative()) + (note.isTallied() && note.status() != NoteStatus.RULED_OUT
                ? proved + ", " + tally(note) : proved);
    }

    static String of(CaseJob job) {
        return on(job.relative()) + "found in this job";
    }

    private static String on(Optional<Relative> relative) {
        return relative.map(other -> "on '" + other.title() + "', of the same family: ").orElse("");
    }

    private static String tally(CaseNote note) {
        var since = note.since() == 0 ? "" : " since " + note.since();
        return note.count() >= Share.ENOUGH ? "seen in " + note.count() + " of about " + note.of() + (note.relative().isEmpty() ? " of ours" : " there") + since
                : "seen " + (note.count() == 1 ? "once" : note.count() + " times") + since;
    }
}
