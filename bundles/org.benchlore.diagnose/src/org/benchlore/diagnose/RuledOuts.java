// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.List;

import org.benchlore.diagnose.book.CaseInHand;
import org.benchlore.diagnose.book.CaseNote;
import org.benchlore.model.NoteStatus;

/** Finds what looked like this and was not. */
final class RuledOuts {

    private final CaseInHand now;

    RuledOuts(CaseInHand now) {
        this.now = now;
    }

    List<RuledOut> all() {
        return now.file().notes().stream().filter(note -> note.status() == NoteStatus.RULED_OUT && fits(note))
                .flatMap(note -> note.cause().or(note::component).flatMap(now.book().library()::element)
                        .flatMap(now.book()::named).map(suspect -> new RuledOut(new Named(note.address(), note.title()),
                                suspect, note.finding())).stream()).toList();
    }

    private boolean fits(CaseNote note) {
        return now.findings().stream().anyMatch(finding -> finding.code().filter(note.codes()::contains).isPresent()
                || !finding.isCode() && now.words().alike(finding.text(), note.symptoms()) > 0);
    }
}
