// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.take;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.benchlore.pack.PackException;
import org.benchlore.pack.zip.PackFile;
import org.benchlore.store.Hash;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

/**
 * Takes a library pack into a library: new and changed files, all of them or none, with a way back until the next one is
 * taken. What the library has later stays. A conflict is nobody's to decide but a person's: without an answer nothing is
 * taken.
 */
public final class Taking {

    /** What is done about conflicts. */
    public enum Conflicts {
        /** Nothing is taken while there is one. */
        REFUSE,
        /** The library's own stays. */
        KEEP_OWN,
        /** What the pack says is taken. */
        TAKE_THEIRS
    }

    private final Library library;

    /**
     * Makes the taking into a library.
     *
     * @param library an open library
     */
    public Taking(Library library) {
        this.library = library;
    }

    /**
     * Puts back what a taking left that was broken off, for whoever opens a library to write it.
     *
     * @param root the library's folder
     * @return true if there was something to put back
     * @throws IOException if it cannot be put back
     */
    public static boolean recover(Path root) throws IOException {
        return new Exchange(root).recover();
    }

    /**
     * Says what taking a pack would do. Changes nothing.
     *
     * @param pack a pack that was looked through
     * @param monitor shows progress by files; may cancel
     * @return every file beside the library
     * @throws PackException if the pack cannot be read any more
     */
    public Preview preview(PackFile pack, IProgressMonitor monitor) throws PackException {
        return new Preview(pack.manifest(), compare(pack, monitor).stream().map(Comparing.Compared::item).toList());
    }

    private List<Comparing.Compared> compare(PackFile pack, IProgressMonitor monitor) throws PackException {
        try {
            var comparing = new Comparing(library, pack, Taken.of(library.root()));
            var progress = SubMonitor.convert(monitor, "Comparing", pack.manifest().files().size());
            var found = new ArrayList<Comparing.Compared>();
            for (var path : pack.manifest().files().keySet()) {
                found.add(comparing.compare(path));
                progress.split(1);
            }
            return found;
        } catch (IOException e) {
            throw new PackException("The pack or the library cannot be read any more: check that their disks are there.", e);
        }
    }

    /**
     * Takes a pack.
     *
     * @param pack a pack that was looked through
     * @param conflicts what is done about conflicts
     * @param monitor shows progress by files; may cancel until the first file is moved
     * @return what was done; its items of the verdicts new and changed, and conflicts if theirs were wanted, were taken
     * @throws PackException with one plain sentence; then nothing was taken
     */
    public Preview take(PackFile pack, Conflicts conflicts, IProgressMonitor monitor) throws PackException {
        var progress = SubMonitor.convert(monitor, 2);
        lock();
        var compared = compare(pack, progress.split(1));
        var items = compared.stream().map(Comparing.Compared::item).toList();
        refuse(compared, conflicts);
        var wanted = conflicts == Conflicts.TAKE_THEIRS ? Set.of(Verdict.NEW, Verdict.CHANGED, Verdict.CONFLICT)
                : Set.of(Verdict.NEW, Verdict.CHANGED);
        var chosen = compared.stream().filter(one -> wanted.contains(one.item().verdict())).toList();
        progress.split(1);
        if (!chosen.isEmpty()) {
            write(pack, chosen);
        }
        return new Preview(pack.manifest(), items);
    }

    private void lock() throws PackException {
        if (!library.holdLock()) {
            throw new PackException("Nothing was taken: another Benchlore is writing this library, or it cannot be written; close the"
                    + " other one or check the permissions.");
        }
        try {
            recover(library.root());
            library.refresh(new NullProgressMonitor());
        } catch (IOException e) {
            throw new PackException("Nothing was taken: what an earlier pack left half done cannot be put back; check the permissions of"
                    + " the folder .benchlore in the library.", e);
        }
    }

    private static void refuse(List<Comparing.Compared> compared, Conflicts conflicts) throws PackException {
        var open = compared.stream().filter(one -> one.item().verdict() == Verdict.CONFLICT).toList();
        if (conflicts == Conflicts.REFUSE && !open.isEmpty()) {
            throw new PackException("Nothing was taken: " + named(open)
                    + "; look at it with --preview, then say --conflicts mine or --conflicts pack.");
        }
        var impossible = open.stream().filter(one -> one.bytes() == null).toList();
        if (conflicts == Conflicts.TAKE_THEIRS && !impossible.isEmpty()) {
            throw new PackException("Nothing was taken: " + named(impossible) + ", which cannot be taken over; keep yours instead.");
        }
    }

    private static String named(List<Comparing.Compared> items) {
        var some = items.stream().limit(3).map(Comparing.Compared::item).map(item -> item.path() + " (" + item.reason() + ")").collect(Collectors.joining(", "));
        return some + (items.size() > 3 ? " and " + (items.size() - 3) + " more" : "") + (items.size() == 1 ? " is a conflict" : " are conflicts");
    }

    private void write(PackFile pack, List<Comparing.Compared> chosen) throws PackException {
        try {
            var taken = Taken.of(library.root());
            var changes = new ArrayList<Exchange.Change>();
            for (var one : chosen) {
                var bytes = one.bytes().get();
                changes.add(change(one.item().path(), bytes));
                taken.put(one.item().path(), Hash.of(bytes), pack.manifest().made());
            }
            changes.add(change(Taken.PATH, taken.bytes()));
            new Exchange(library.root()).run(changes);
            library.refresh(new NullProgressMonitor());
        } catch (IOException | UncheckedIOException e) {
            throw new PackException("Nothing was taken: " + why(e) + "; the library is as it was.", e);
        }
    }

    private static String why(Exception e) {
        return e.getMessage() == null ? "the library cannot be written" : "the library cannot be written (" + e.getMessage() + ")";
    }

    private Exchange.Change change(String path, byte[] bytes) throws IOException {
        var file = library.root().resolve(path);
        var before = Files.exists(file) ? Optional.of(Hash.of(Files.readAllBytes(file))) : Optional.<String>empty();
        return new Exchange.Change(path, before, Optional.of(bytes));
    }

    /**
     * Takes back the last taking, all of it or nothing.
     *
     * @return paths of the files that are as they were before
     * @throws PackException if there is none, or a file was changed since
     */
    public List<String> back() throws PackException {
        lock();
        try {
            var exchange = new Exchange(library.root());
            var changes = exchange.back().orElseThrow(() -> new PackException("There is nothing to take back: no pack was taken into this"
                    + " library, or it was taken back already."));
            exchange.run(changes);
            exchange.forget();
            library.refresh(new NullProgressMonitor());
            return changes.stream().map(Exchange.Change::path).filter(path -> !path.equals(Taken.PATH)).toList();
        } catch (IOException | UncheckedIOException e) {
            throw new PackException("Nothing was taken back: " + why(e) + "; put that file back by hand or keep what was taken.", e);
        }
    }
}
