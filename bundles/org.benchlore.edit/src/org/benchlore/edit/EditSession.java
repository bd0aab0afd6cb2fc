// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;

import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.model.compare.Side;
import org.benchlore.store.Changes;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Hash;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LibraryUris;
import org.benchlore.store.LoadedFile;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.eclipse.emf.edit.domain.EditingDomain;

/**
 * One element being edited: a working copy with its own editing domain and history. Nothing reaches the library before
 * {@link #save}, and a file that was changed meanwhile is never overwritten. Used on one thread; only listeners may be
 * told from another.
 */
public final class EditSession implements AutoCloseable {

    /** What listeners are told. */
    public enum Event {
        /** The working copy was changed, undone or redone. */
        EDITED,
        /** The working copy was saved. */
        SAVED,
        /** The file was changed by somebody else; told on the thread that took the change in. */
        OUTSIDE,
        /** The session is closed. */
        CLOSED
    }

    private final Library library;
    private final Disk disk;
    private final TopElement element;
    private final History history = new History();
    private final EditDomain domain = new EditDomain(history.stack());
    private final Edits edits;
    private final List<Consumer<Event>> listeners = new CopyOnWriteArrayList<>();
    private final Runnable stopListening;
    private Optional<LoadedFile> base;
    private long version;
    private volatile boolean isSaving;
    private boolean isClosed;
    private boolean isUnsaved;

    private EditSession(Library library, TopElement element, Optional<LoadedFile> base, RandomGenerator random) {
        this.library = library;
        this.element = element;
        this.base = base;
        this.disk = new Disk(library, path());
        new ResourceImpl(LibraryUris.of(path())).getContents().add(element);
        this.edits = new Edits(this, random);
        history.onChange(this::edited);
        this.stopListening = library.onChange(this::outside);
    }

    /**
     * Opens an element of the library.
     *
     * @param library an open library
     * @param path path of its file
     * @param random source of the ends of new ids
     * @return the session
     * @throws LibraryException if there is no such file or it may not be saved over
     */
    static EditSession open(Library library, String path, RandomGenerator random) throws LibraryException {
        var file = library.file(path).orElseThrow(
                () -> new LibraryException(path + " is not in the library: refresh it"));
        if (!file.isWhole()) {
            throw new LibraryException(path + " cannot be edited, since saving would drop what cannot be read: "
                    + file.problems().get(0).reason() + "; mend the file first");
        }
        return new EditSession(library, Copies.of(file.root().orElseThrow()), Optional.of(file), random);
    }

    /**
     * Starts a session with what was written before.
     *
     * @param library an open library
     * @param working the working copy, which the session takes
     * @param base what it was made from, or empty for a new element
     * @param random source of the ends of new ids
     * @return the session, which has something to save
     */
    static EditSession resume(Library library, TopElement working, Optional<LoadedFile> base, RandomGenerator random) {
        var session = new EditSession(library, working, base, random);
        session.isUnsaved = true;
        session.version++;
        return session;
    }

    /**
     * Returns the working copy. It is changed by edits only and stays the same object until the session is closed.
     *
     * @return the element
     */
    public TopElement element() {
        return element;
    }

    /**
     * Returns what people call the element as it is now.
     *
     * @return a title, or the id
     */
    public String title() {
        return ElementTitle.of(element);
    }

    /**
     * Returns where the element is saved.
     *
     * @return path below the library
     */
    public String path() {
        return Kind.of(element.eClass()).orElseThrow().path(element.getId());
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
     * Returns the file that the working copy was made from or last saved as.
     *
     * @return its snapshot, or empty for an element that was never saved
     */
    public Optional<LoadedFile> base() {
        return base;
    }

    /**
     * Returns the maker of edits for this session.
     *
     * @return what can be done to the element
     */
    public Edits edits() {
        return edits;
    }

    /**
     * Returns the EMF editing domain, for commands of one's own.
     *
     * @return the domain of this session alone
     */
    public EditingDomain domain() {
        return domain;
    }

    History history() {
        return history;
    }

    /**
     * Returns the working copy as the bytes of a file.
     *
     * @return the library's own form
     */
    public byte[] bytes() {
        return disk.bytes(element);
    }

    /**
     * Counts the changes, so that one can see whether there were any.
     *
     * @return a number that grows with every edit, undo and redo
     */
    public long version() {
        return version;
    }

    /**
     * Does an edit.
     *
     * @param edit an edit made for this session
     * @throws IllegalArgumentException if it cannot be done, with a plain sentence
     */
    public void execute(Edit edit) {
        history.execute(edit, Optional.empty());
    }

    /** Ends a row of keystrokes: the next one in the same field is undone apart. Called when the field is left. */
    public void endTyping() {
        history.endTyping();
    }

    /**
     * Tells whether the working copy differs from what was last saved.
     *
     * @return true if there is something to save
     */
    public boolean isDirty() {
        return isUnsaved || history.stack().isSaveNeeded();
    }

    /**
     * Returns what undo would take back.
     *
     * @return the label of the last edit, or empty
     */
    public Optional<String> undoLabel() {
        return history.last().map(Entry::getLabel);
    }

    /**
     * Returns what redo would do again.
     *
     * @return the label of the next edit, or empty
     */
    public Optional<String> redoLabel() {
        return history.next().map(Entry::getLabel);
    }

    /**
     * Says why there can be no undo now.
     *
     * @return a plain sentence, or empty if there can
     */
    public Optional<String> undoProblem() {
        return history.undoProblem();
    }

    /**
     * Takes the last edit back, in all the files it changed.
     *
     * @throws IllegalStateException if that cannot be, with the sentence of {@link #undoProblem}
     */
    public void undo() {
        history.undo();
    }

    /**
     * Does the edit again that was taken back last.
     *
     * @throws IllegalStateException if that cannot be, with a plain sentence
     */
    public void redo() {
        history.redo();
    }

    /**
     * Looks at the disk.
     *
     * @return what is wrong, or empty if the file is what the session was made from
     * @throws LibraryException if the file or the library cannot be looked at
     */
    public Optional<Conflict> conflict() throws LibraryException {
        var now = disk.now();
        var hash = now.map(LoadedFile::hash);
        disk.takeInIfOlder(hash);
        if (hash.equals(base.map(LoadedFile::hash))) {
            return Optional.empty();
        }
        if (hash.equals(Optional.of(Hash.of(bytes())))) {
            base = now;
            return Optional.empty();
        }
        return Optional.of(disk.conflict(base, element, now));
    }

    /**
     * Saves the working copy over its file and goes on from there.
     *
     * @return the saved file, or the conflict because of which nothing was written
     * @throws LibraryException if the library cannot be written
     */
    public SaveResult save() throws LibraryException {
        var pending = beginSave();
        pending.run();
        return endSave(pending);
    }

    /**
     * Takes what is to be saved, so that it can be written on another thread while this one goes on. {@link #endSave}
     * must follow.
     *
     * @return the working copy as it is now, to be run
     */
    public PendingSave beginSave() {
        isSaving = true;
        return new PendingSave(library, disk, path(), base, bytes(), version);
    }

    /**
     * Takes what came of writing. What was edited meanwhile is still to be saved.
     *
     * @param pending what {@link #beginSave} returned, after it was run
     * @return the saved file, or the conflict because of which nothing was written
     * @throws LibraryException if the library could not be written
     */
    public SaveResult endSave(PendingSave pending) throws LibraryException {
        isSaving = false;
        var result = pending.outcome();
        if (result instanceof SaveResult.Saved saved) {
            base = Optional.of(saved.file());
            isUnsaved = version != pending.version();
            history.endTyping();
            if (!isUnsaved) {
                history.stack().saveIsDone();
            }
            tell(Event.SAVED);
        } else if (version != pending.version()) {
            // The questions are to be about what stands there now.
            return save();
        }
        return result;
    }

    /**
     * Takes in what somebody else changed, as one edit that can be undone; after that the working copy can be saved.
     *
     * @param conflict what {@link #conflict} returned
     * @param answers whose value to take in each question, and in each that an answer brings up
     * @throws IllegalArgumentException if a question is left open: nobody's value is taken silently
     */
    public void settle(Conflict.Changed conflict, Map<String, Side> answers) {
        var merged = conflict.merge().decided(answers);
        if (!merged.open().isEmpty()) {
            throw new IllegalArgumentException(merged.open().size() + " questions are not answered yet: decide each one");
        }
        replace("take in the change from the disk", merged.element(), Optional.of(conflict.theirs()));
    }

    /**
     * Keeps the working copy of a file that was deleted: the next save writes it anew.
     *
     * @param conflict what {@link #conflict} returned
     */
    public void keep(Conflict.Deleted conflict) {
        if (!conflict.path().equals(path())) {
            throw new IllegalArgumentException("The conflict is one of " + conflict.path() + ", not of " + path());
        }
        base = Optional.empty();
        isUnsaved = true;
        edited();
    }

    /**
     * Goes back to the file as it lies on the disk now, as one edit that can be undone. An element that was never saved
     * stays as it is.
     *
     * @throws LibraryException if the file is gone or cannot be read whole
     */
    public void revert() throws LibraryException {
        var now = disk.now();
        if (now.isEmpty() || !now.get().isWhole()) {
            throw new LibraryException(path()
                    + " cannot be gone back to: there is no such file that can be read whole");
        }
        replace("go back to what was saved", Copies.of(now.get().root().orElseThrow()), now);
        isUnsaved = false;
        history.stack().saveIsDone();
        edited();
    }

    private void replace(String label, TopElement content, Optional<LoadedFile> file) {
        var before = base;
        execute(Edit.of(label, new ReplaceContent(element, content, done -> base = done ? file : before)));
    }

    /**
     * Tells a listener what happens.
     *
     * @param listener told of each event
     * @return removes the listener when run
     */
    public Runnable onEvent(Consumer<Event> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private void edited() {
        version++;
        tell(Event.EDITED);
    }

    private void outside(Changes changes) {
        if (!isSaving && (changes.changed().contains(path()) || changes.removed().contains(path()))) {
            tell(Event.OUTSIDE);
        }
    }

    private void tell(Event event) {
        listeners.forEach(listener -> listener.accept(event));
    }

    /**
     * Tells whether the session is over.
     *
     * @return true after {@link #close}
     */
    public boolean isClosed() {
        return isClosed;
    }

    /** Ends the session; what was not saved is dropped, and so is its draft. */
    @Override
    public void close() {
        if (!isClosed) {
            isClosed = true;
            stopListening.run();
            tell(Event.CLOSED);
            listeners.clear();
        }
    }
}
