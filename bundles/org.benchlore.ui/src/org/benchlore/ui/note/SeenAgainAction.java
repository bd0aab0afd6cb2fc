// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.time.LocalDate;
import java.util.Optional;

import org.benchlore.edit.desk.QuickChange;
import org.benchlore.edit.desk.SeenAgain;
import org.benchlore.edit.desk.UnitInHand;
import org.benchlore.model.Address;
import org.benchlore.model.FieldNote;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;
import org.benchlore.store.Row;
import org.benchlore.ui.page.PageHistory;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.status.LastChange;
import org.benchlore.ui.status.SavedAtOnce;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;

/** Says of a note, in one key, that the same was seen today, on the unit whose page or job was read last. */
public final class SeenAgainAction {

    private final IWorkbenchWindow window;
    private final LastChange last;

    /**
     * Makes the action.
     *
     * @param window the window
     */
    public SeenAgainAction(IWorkbenchWindow window) {
        this.window = window;
        this.last = window.getService(LastChange.class);
    }

    /** Does it for the note in front. */
    public void run() {
        window.getService(LibrarySession.class).current().ifPresent(opened -> {
            var library = opened.library().library();
            var note = new Standing(window.getActivePage(), library).element().flatMap(address -> note(library, address));
            note.ifPresentOrElse(found -> add(opened, found), () -> last.say(window, Messages.noNote));
        });
    }

    static Optional<FieldNote> note(Library library, Address address) {
        return library.file(address.path()).flatMap(LoadedFile::root).filter(FieldNote.class::isInstance)
                .map(FieldNote.class::cast);
    }

    private void add(Opened opened, FieldNote note) {
        var library = opened.library().library();
        var today = LocalDate.now();
        var unit = UnitInHand.find(library, note, window.getService(PageHistory.class).latestFirst());
        var occasion = new SeenAgain.Occasion(unit, today, Optional.empty());
        var path = library.addressOf(note).orElseThrow().path();
        var sentence = unit.isPresent() ? NLS.bind(Messages.seenOn, title(library, unit.get()), today)
                : NLS.bind(Messages.seenNowhere, today);
        new SavedAtOnce(window).make(() -> QuickChange.make(opened.library().sessions(), path,
                session -> SeenAgain.edit(session, occasion)), sentence);
    }

    private static String title(Library library, Address unit) {
        return library.catalogue().at(unit).map(Row::title).orElse(unit.id());
    }
}
