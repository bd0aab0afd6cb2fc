// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.SaveResult;
import org.benchlore.edit.Sessions;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.Media;
import org.benchlore.store.Hash;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A note while it is being written down: unsorted, of today, only its text is required. It lives in an edit session, so
 * that a draft of it outlives the program; it gets a name made of its words when it is saved.
 */
public final class MinuteNote {

    private static final int WORDS_IN_ID = 8;

    private final Sessions sessions;
    private final EditSession session;
    private final NoteProposals proposals;
    private final NoteFields fields;

    private MinuteNote(Sessions sessions, EditSession session) {
        this.sessions = sessions;
        this.session = session;
        this.proposals = new NoteProposals(sessions.library());
        this.fields = new NoteFields(sessions.library());
    }

    /**
     * Begins a note.
     *
     * @param sessions the library's sessions
     * @param today its date
     * @return an empty note
     * @throws LibraryException if no id is free
     */
    public static MinuteNote begin(Sessions sessions, LocalDate today) throws LibraryException {
        var session = sessions.create(Kind.NOTE, "", today.getYear());
        session.execute(session.edits().value(session.element(), Literals.FIELD_NOTE__DATE, today));
        return new MinuteNote(sessions, session);
    }

    /**
     * Goes on with a note that was begun.
     *
     * @param sessions the library's sessions
     * @param session the session of a note that was never saved
     * @return the note
     */
    public static MinuteNote goOn(Sessions sessions, EditSession session) {
        return new MinuteNote(sessions, session);
    }

    /**
     * Lists the notes that were begun and neither saved nor dropped.
     *
     * @param sessions the library's sessions
     * @return their sessions, in no order
     */
    public static List<EditSession> unfinished(Sessions sessions) {
        return sessions.all().stream().filter(one -> one.base().isEmpty() && one.element() instanceof FieldNote).toList();
    }

    /**
     * Returns the note as it is now.
     *
     * @return the working copy
     */
    public FieldNote note() {
        return (FieldNote) session.element();
    }

    /**
     * Returns the session that holds it.
     *
     * @return the session
     */
    public EditSession session() {
        return session;
    }

    /**
     * Returns the maker of proposals from the text.
     *
     * @return what reads the text
     */
    public NoteProposals proposals() {
        return proposals;
    }

    /**
     * Takes what is written.
     *
     * @param text the whole text
     */
    public void write(String text) {
        session.execute(session.edits().typing(note(), Literals.FIELD_NOTE__TEXT, text));
    }

    /**
     * Lists what the note says beside its text.
     *
     * @return what can be taken out again
     */
    public List<Proposal> fields() {
        return fields.in(note());
    }

    /**
     * Puts a value in, or takes it out if it is in.
     *
     * @param value one of the proposals or of {@link #fields}
     */
    public void toggle(Proposal value) {
        session.execute(fields().contains(value) ? fields.remove(session, value) : proposals.accept(session, value));
    }

    /**
     * Puts values in that are not in yet, as one edit.
     *
     * @param values what the note is about
     */
    public void fill(List<Proposal> values) {
        for (var value : values) {
            if (!fields().contains(value)) {
                session.execute(proposals.accept(session, value));
            }
        }
    }

    /**
     * Adds a picture.
     *
     * @param stored a file on the library's shelf
     * @return the picture in the note
     */
    public Media add(MediaShelf.Stored stored) {
        var media = BookFactory.eINSTANCE.createMedia();
        media.setFile(stored.file());
        session.execute(session.edits().inner().add(note(), Literals.FIELD_NOTE__MEDIA, media, InnerEdits.END).edit());
        return media;
    }

    /**
     * Shows another file in place of a picture's, such as a turned one.
     *
     * @param media a picture of the note
     * @param stored a file on the library's shelf
     */
    public void replace(Media media, MediaShelf.Stored stored) {
        session.execute(session.edits().text(media, Literals.MEDIA__FILE, stored.file()));
    }

    /**
     * Says what a picture shows.
     *
     * @param media a picture of the note
     * @param words the caption, may be empty
     */
    public void caption(Media media, String words) {
        session.execute(session.edits().typing(media, Literals.MEDIA__CAPTION, words));
    }

    /**
     * Takes a picture out of the note.
     *
     * @param media a picture of the note
     */
    public void remove(Media media) {
        session.execute(session.edits().inner().remove(media));
    }

    /**
     * Returns a copy of the note under a name made of its words, for saving it away from the thread that edits.
     *
     * @return a note that stands nowhere yet
     * @throws LibraryException if there is no text, or no id is free
     */
    public FieldNote named() throws LibraryException {
        var text = note().getText() == null ? "" : note().getText().strip();
        if (text.isEmpty()) {
            throw new LibraryException("The note was not saved: write what was learned");
        }
        var words = text.split("\\s+", WORDS_IN_ID + 1);
        var head = String.join(" ", Arrays.asList(words).subList(0, Math.min(words.length, WORDS_IN_ID)));
        var copy = EcoreUtil.copy(note());
        try (var name = sessions.create(Kind.NOTE, head, note().getDate().getYear())) {
            copy.setId(name.element().getId());
        }
        copy.setText(text);
        return copy;
    }

    /**
     * Saves what {@link #named} returned. The session goes on until {@link #drop}.
     *
     * @param sessions the library's sessions
     * @param named the note
     * @return the saved file
     * @throws LibraryException if it cannot be saved
     */
    public static LoadedFile save(Sessions sessions, FieldNote named) throws LibraryException {
        try (var fresh = sessions.resume(named, Optional.empty())) {
            if (fresh.save() instanceof SaveResult.Stopped stopped) {
                throw new LibraryException(stopped.conflict().sentence());
            }
            return fresh.base().orElseThrow();
        } catch (LibraryException e) {
            throw new LibraryException("The note was not saved: " + e.getMessage(), e);
        }
    }

    /**
     * Takes a saved note out of the library again and returns it to be gone on with. Nothing written is lost.
     *
     * @param sessions the library's sessions
     * @param saved what {@link #save} returned
     * @return the note, not saved any more
     * @throws LibraryException if the note was changed since, or cannot be deleted
     */
    public static MinuteNote takeBack(Sessions sessions, LoadedFile saved) throws LibraryException {
        var library = sessions.library();
        var file = library.root().resolve(saved.path());
        try {
            if (!Hash.of(Files.readAllBytes(file)).equals(saved.hash()) || sessions.find(saved.path()).isPresent()) {
                throw new LibraryException("The note stays, since it was changed or is being edited: edit it instead");
            }
            Files.delete(file);
            library.refresh(new NullProgressMonitor());
        } catch (IOException e) {
            throw new LibraryException("The note stays: " + saved.path() + " cannot be deleted; check its permissions", e);
        }
        var copy = (FieldNote) EcoreUtil.copy(saved.root().orElseThrow());
        return new MinuteNote(sessions, sessions.resume(copy, Optional.empty()));
    }

    /** Ends it; its draft goes too. */
    public void drop() {
        session.close();
    }
}
