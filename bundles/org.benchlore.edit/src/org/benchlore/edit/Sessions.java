// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;

import org.benchlore.edit.EditSession.Event;
import org.benchlore.model.ElementId;
import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.store.BookFormat;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The edit sessions of an open library: one for each file, shared by all who edit it. */
public final class Sessions {

    private static final int TRIES = 20;

    private final Library library;
    private final RandomGenerator random;
    private final Map<String, EditSession> open = new ConcurrentHashMap<>();
    private final List<Consumer<EditSession>> listeners = new CopyOnWriteArrayList<>();

    /**
     * Makes the sessions of a library.
     *
     * @param library an open library
     * @param random source of the ends of new ids
     */
    public Sessions(Library library, RandomGenerator random) {
        this.library = library;
        this.random = random;
    }

    /**
     * Returns the library.
     *
     * @return the open library
     */
    public Library library() {
        return library;
    }

    /**
     * Returns the session of a file, opening one if there is none.
     *
     * @param path path of a file of the library
     * @return the session
     * @throws LibraryException if there is no such file or it may not be saved over
     */
    public EditSession open(String path) throws LibraryException {
        var known = open.get(path);
        return known != null ? known : added(EditSession.open(library, path, random));
    }

    /**
     * Starts a new element.
     *
     * @param kind its kind
     * @param title what people call it, from which its id is made; may be empty
     * @param year the year of a note or a job
     * @return a session whose element has an id that is free in the library
     * @throws LibraryException if no id is free, or the library has its only element of this kind already
     */
    public EditSession create(Kind kind, String title, int year) throws LibraryException {
        var element = (TopElement) EcoreUtil.create(kind.type());
        element.setId(freeId(kind, title, year));
        element.setFormatVersion(BookFormat.VERSION);
        element.setInvented(library.catalogue().rows(Kind.SHOP).anyMatch(row -> row.invented()));
        if (!title.isBlank()) {
            element.setTitle(FieldText.clean(title).strip());
        }
        return added(EditSession.resume(library, element, Optional.empty(), random));
    }

    private String freeId(Kind kind, String title, int year) throws LibraryException {
        for (int i = 0; i < TRIES; i++) {
            var id = ElementId.create(kind, title, year, random);
            var free = i == 0 || kind.isDated() || kind.isSingle() ? id : ElementId.inner(id, random);
            if (library.catalogue().byId(free).isEmpty() && !open.containsKey(kind.path(free))) {
                return free;
            }
        }
        throw new LibraryException(kind.isSingle() ? "This library has its " + kind.word() + " already: change that one"
                : "No free id was found for the new " + kind.word() + ": give it another title");
    }

    /**
     * Goes on with what was written before.
     *
     * @param working the working copy, which the session takes
     * @param base what it was made from, or empty for a new element
     * @return a session with something to save
     * @throws IllegalStateException if the file is being edited already
     */
    public EditSession resume(TopElement working, Optional<LoadedFile> base) {
        var session = EditSession.resume(library, working, base, random);
        if (open.containsKey(session.path())) {
            session.close();
            throw new IllegalStateException(session.path() + " is being edited already: close it first");
        }
        return added(session);
    }

    private EditSession added(EditSession session) {
        open.put(session.path(), session);
        session.onEvent(event -> {
            if (event == Event.CLOSED) {
                open.remove(session.path(), session);
            }
        });
        listeners.forEach(listener -> listener.accept(session));
        return session;
    }

    /**
     * Returns the session of a file, if there is one.
     *
     * @param path path of a file
     * @return the session, or empty
     */
    public Optional<EditSession> find(String path) {
        return Optional.ofNullable(open.get(path));
    }

    /**
     * Returns an element as it stands now.
     *
     * @param path path of a file of the library
     * @return its working copy if it is being edited, else as it lies in the library; empty if it cannot be read
     */
    public Optional<TopElement> current(String path) {
        return find(path).map(EditSession::element).or(() -> library.file(path).flatMap(LoadedFile::root));
    }

    /**
     * Returns every open session.
     *
     * @return the sessions, in no order
     */
    public Collection<EditSession> all() {
        return List.copyOf(open.values());
    }

    /**
     * Tells a listener of every session that is opened from now on.
     *
     * @param listener told of the new session
     * @return removes the listener when run
     */
    public Runnable onOpen(Consumer<EditSession> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }
}
