// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.Sessions;
import org.benchlore.edit.draft.Autosave;
import org.benchlore.edit.draft.Draft;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.edit.form.ClipBoard;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.ui.services.IDisposable;

/**
 * The edit sessions of the library that the window works in. What is written and not saved is kept as drafts in the
 * user's own folder every few seconds. Used on the window's thread.
 */
public final class Editing implements IDisposable {

    private static final Duration INTERVAL = Duration.ofSeconds(2);

    private record Room(OpenLibrary library, Autosave autosave, ScheduledExecutorService timer) {

        void close() {
            timer.shutdown();
            autosave.close();
        }
    }

    private final LibrarySession session;
    private final Executor window;
    private final Runnable unlisten;
    private final ClipBoard clips = new ClipBoard();
    private Optional<Room> room = Optional.empty();

    /**
     * Makes the sessions' keeper.
     *
     * @param session holds the library
     * @param window runs something soon on the window's thread
     */
    public Editing(LibrarySession session, Executor window) {
        this.session = session;
        this.window = window;
        // Editors are closed by the same event; their drafts go with them, so the room is left after that.
        this.unlisten = session.onChange(event -> window.execute(this::leaveOther));
    }

    private void leaveOther() {
        var now = session.current().map(Opened::library);
        room.filter(old -> now.filter(old.library()::equals).isEmpty()).ifPresent(old -> {
            old.close();
            room = Optional.empty();
        });
    }

    private Optional<Room> room() {
        leaveOther();
        if (room.isEmpty()) {
            room = session.current().map(opened -> enter(opened.library()));
        }
        return room;
    }

    private Room enter(OpenLibrary library) {
        var autosave = new Autosave(library.drafts(), library.sessions(), Clock.systemDefaultZone(), INTERVAL);
        var timer = Executors.newSingleThreadScheduledExecutor(work -> {
            var thread = new Thread(work, "Drafts");
            thread.setDaemon(true);
            return thread;
        });
        autosave.start(timer, window);
        return new Room(library, autosave, timer);
    }

    /**
     * Returns the sessions of the library that is open.
     *
     * @return the sessions, or empty if no library is open
     */
    public Optional<Sessions> sessions() {
        return room().map(now -> now.library().sessions());
    }

    /**
     * Lists what programs that ended without saving left behind.
     *
     * @return the drafts of the open library, the latest first
     */
    public List<Draft> drafts() {
        return room().map(now -> now.library().drafts().list(now.library().library())).orElse(List.of());
    }

    /**
     * Goes on with a draft.
     *
     * @param draft one of {@link #drafts}
     * @return a session with something to save
     * @throws LibraryException if it cannot be read or its file is being edited already
     */
    public EditSession restore(Draft draft) throws LibraryException {
        var now = room().orElseThrow(() -> new LibraryException(Messages.noLibrary));
        return now.library().drafts().restore(draft, now.library().sessions());
    }

    /**
     * Drops a draft.
     *
     * @param draft one of {@link #drafts}
     * @throws LibraryException if it cannot be deleted
     */
    public void discard(Draft draft) throws LibraryException {
        room().orElseThrow(() -> new LibraryException(Messages.noLibrary)).library().drafts().discard(draft);
    }

    /**
     * Says why drafts cannot be written.
     *
     * @return a plain sentence, or empty while they can
     */
    public Optional<String> problem() {
        return room.flatMap(now -> now.autosave().problem());
    }

    /**
     * Returns what keeps copied elements, for all editors.
     *
     * @return the same at any time
     */
    public ClipBoard clips() {
        return clips;
    }

    @Override
    public void dispose() {
        unlisten.run();
        room.ifPresent(Room::close);
        room = Optional.empty();
    }
}
