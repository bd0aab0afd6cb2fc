// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.draft;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.Sessions;
import org.benchlore.store.AtomicFile;
import org.benchlore.store.BookFormat;
import org.benchlore.store.Hash;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LibraryLock;
import org.benchlore.store.LoadedFile;

/**
 * The drafts of one library in the user's own folder. Each running program writes into a folder of its own, held by a
 * lock that ends with the program however it ends; drafts in folders that nobody holds can be restored.
 */
public final class Drafts implements AutoCloseable {

    private static final String ENDING = ".draft";

    private final Path folder;
    private final BookFormat format = new BookFormat();
    private final Map<Path, LibraryLock> held = new TreeMap<>();
    private Optional<Path> own = Optional.empty();

    /**
     * Makes the drafts of a library. Nothing is written before there is a draft.
     *
     * @param folder a folder of the user's own for this library; it may be missing
     */
    public Drafts(Path folder) {
        this.folder = folder;
    }

    /** Returns what a session would have to be restored from. */
    DraftFile of(EditSession session, java.time.Instant when) {
        var base = session.base().flatMap(LoadedFile::root).map(root -> format.write(session.path(), root));
        return new DraftFile(session.path(), session.title(), when, base, session.bytes());
    }

    /** Writes a draft in the place of the one before. */
    synchronized void write(DraftFile draft) throws IOException {
        if (own.isEmpty()) {
            var fresh = Files.createDirectories(folder.resolve(UUID.randomUUID().toString()));
            LibraryLock.tryTake(fresh).ifPresent(lock -> held.put(fresh, lock));
            own = Optional.of(fresh);
        }
        AtomicFile.write(own.get().resolve(name(draft.path())), draft.bytes());
    }

    private static String name(String path) {
        return path.replace('/', '+') + ENDING;
    }

    /** Removes the draft of a file, if there is one. */
    synchronized void remove(String path) throws IOException {
        if (own.isPresent()) {
            Files.deleteIfExists(own.get().resolve(name(path)));
        }
    }

    /**
     * Lists what can be restored: the drafts of programs that are no longer running.
     *
     * @param library the open library
     * @return the drafts, the latest first; those that are not whole are passed over and kept
     */
    public synchronized List<Draft> list(Library library) {
        var found = new ArrayList<Draft>();
        try {
            for (var abandoned : abandoned()) {
                for (var file : files(abandoned)) {
                    read(file).map(draft -> draft(library, file, draft)).ifPresent(found::add);
                }
            }
        } catch (IOException e) {
            log(Level.WARNING, "Drafts cannot be listed: look into " + folder, e);
        }
        found.sort(Comparator.comparing(Draft::when).reversed());
        return found;
    }

    /** Folders of programs that ended; they are held from now on, so that no other program offers the same drafts. */
    private List<Path> abandoned() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (var folders = Files.list(folder)) {
            for (var other : folders.filter(Files::isDirectory).filter(path -> !held.containsKey(path)).toList()) {
                LibraryLock.tryTake(other).ifPresent(lock -> held.put(other, lock));
            }
        }
        return held.keySet().stream().filter(path -> own.filter(path::equals).isEmpty()).toList();
    }

    private static List<Path> files(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING)).sorted().toList();
        }
    }

    private static Optional<DraftFile> read(Path file) {
        try {
            var draft = DraftFile.read(Files.readAllBytes(file));
            if (draft.isEmpty()) {
                log(Level.WARNING, "The draft " + file + " is not whole and was passed over", null);
            }
            return draft;
        } catch (IOException e) {
            log(Level.WARNING, "The draft " + file + " cannot be read", e);
            return Optional.empty();
        }
    }

    private static Draft draft(Library library, Path file, DraftFile draft) {
        return new Draft(draft.path(), draft.title(), draft.when(), base(library, draft), file);
    }

    private static Draft.Base base(Library library, DraftFile draft) {
        var now = library.catalogue().entry(draft.path()).map(entry -> entry.hash());
        var before = draft.base().map(Hash::of);
        if (now.equals(before)) {
            return before.isEmpty() ? Draft.Base.NEW : Draft.Base.SAME;
        }
        return now.isEmpty() ? Draft.Base.GONE : Draft.Base.CHANGED;
    }

    /**
     * Opens a session with what a draft holds. If the file was changed since, the session's conflict says so.
     *
     * @param draft one of {@link #list}
     * @param sessions the library's sessions
     * @return a session with something to save
     * @throws LibraryException if the draft cannot be read, or its file is being edited already
     */
    public EditSession restore(Draft draft, Sessions sessions) throws LibraryException {
        var content = read(draft.file()).orElseThrow(() -> new LibraryException("The draft of '" + draft.title()
                + "' cannot be restored: it is not whole; look at " + draft.file()));
        var mine = format.read(content.path(), content.mine());
        var base = content.base().map(bytes -> format.read(content.path(), bytes));
        if (!mine.isWhole()) {
            throw new LibraryException("The draft of '" + draft.title() + "' cannot be restored: "
                    + mine.problems().get(0).reason() + "; look at " + draft.file());
        }
        try {
            var session = sessions.resume(mine.root().orElseThrow(), base);
            write(new DraftFile(content.path(), content.title(), content.when(), content.base(), content.mine()));
            Files.deleteIfExists(draft.file());
            return session;
        } catch (IllegalStateException e) {
            throw new LibraryException("The draft of '" + draft.title() + "' was not restored: " + e.getMessage(), e);
        } catch (IOException e) {
            throw new LibraryException("The draft of '" + draft.title() + "' cannot be kept in " + folder
                    + ": check the free space", e);
        }
    }

    /**
     * Drops a draft.
     *
     * @param draft one of {@link #list}
     * @throws LibraryException if it cannot be deleted
     */
    public void discard(Draft draft) throws LibraryException {
        try {
            Files.deleteIfExists(draft.file());
        } catch (IOException e) {
            throw new LibraryException("The draft " + draft.file() + " cannot be deleted: check its permissions", e);
        }
    }

    /** Lets go of the folders; drafts that are still there can be restored by the next program. */
    @Override
    public synchronized void close() {
        held.forEach((path, lock) -> {
            try (lock) {
                if (files(path).isEmpty()) {
                    delete(path);
                }
            } catch (IOException e) {
                log(Level.DEBUG, "The folder of drafts " + path + " is left as it is", e);
            }
        });
        held.clear();
        own = Optional.empty();
    }

    private static void delete(Path path) throws IOException {
        try (var files = Files.walk(path)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static void log(Level level, String message, Exception cause) {
        System.getLogger(Drafts.class.getName()).log(level, message, cause);
    }
}
