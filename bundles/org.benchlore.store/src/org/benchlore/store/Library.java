// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.IOException;
import java.lang.ref.SoftReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.model.TopElement;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;

/**
 * An open library: a folder of files, the catalogue of their facts, and the files themselves as snapshots, loaded
 * when they are asked for. Safe to read from several threads.
 */
public final class Library implements AutoCloseable {

    private final Path root;
    private final CatalogueFile kept;
    private final BookFormat format = new BookFormat();
    private final Map<String, SoftReference<LoadedFile>> loaded = new ConcurrentHashMap<>();
    private final List<Consumer<Changes>> listeners = new CopyOnWriteArrayList<>();
    private volatile Catalogue catalogue;
    private LibraryLock lock;
    private boolean isKept = true;

    private Library(Path root, CatalogueFile kept) {
        this.root = root;
        this.kept = kept;
        this.catalogue = new Catalogue(kept.read());
    }

    /**
     * Opens a library. Files that cannot be read are set apart; the rest opens.
     *
     * @param folder the library's folder
     * @param cache a folder of the user's own for the catalogue; it may be missing or damaged
     * @param monitor shows progress by files; may cancel
     * @return the open library
     * @throws LibraryException if there is no readable library in the folder
     */
    public static Library open(Path folder, Path cache, IProgressMonitor monitor) throws LibraryException {
        if (!Files.isDirectory(folder)) {
            throw new LibraryException("There is no library at " + folder
                    + ": give the folder of a library, or make one with 'new " + folder + "'");
        }
        try {
            var library = new Library(folder.toRealPath(), new CatalogueFile(cache.resolve("catalogue")));
            library.refresh(monitor);
            if (library.catalogue.entries().isEmpty()) {
                throw new LibraryException(folder + " holds no file of a library: give the folder that holds shop.xmi,"
                        + " or make a library with 'new DIR'");
            }
            return library;
        } catch (IOException e) {
            throw new LibraryException("The library at " + folder + " cannot be read: check its permissions", e);
        }
    }

    /**
     * Returns the library's folder.
     *
     * @return an absolute path
     */
    public Path root() {
        return root;
    }

    /**
     * Returns the facts as they are now.
     *
     * @return a catalogue that does not change
     */
    public Catalogue catalogue() {
        return catalogue;
    }

    /**
     * Returns everything wrong with the files: unreadable, read-only, in the wrong folder, ids used twice, references
     * to nothing.
     *
     * @return the problems, by path
     */
    public List<FileProblem> problems() {
        return Misfits.amongFiles(catalogue);
    }

    /**
     * Returns a file's snapshot, loading it if need be.
     *
     * @param path path below the library
     * @return the snapshot, or empty if the library has no such file
     */
    public Optional<LoadedFile> file(String path) {
        if (catalogue.entry(path).isEmpty()) {
            return Optional.empty();
        }
        var reference = loaded.get(path);
        var file = reference == null ? null : reference.get();
        return file == null ? load(path) : Optional.of(file);
    }

    private Optional<LoadedFile> load(String path) {
        try {
            var file = format.read(path, Files.readAllBytes(root.resolve(path)));
            loaded.put(path, new SoftReference<>(file));
            return Optional.of(file);
        } catch (IOException e) {
            System.getLogger(Library.class.getName()).log(System.Logger.Level.WARNING, path + " cannot be opened", e);
            return Optional.empty();
        }
    }

    /**
     * Returns an element of any depth.
     *
     * @param address file and id
     * @return the element, or empty if it does not exist or its file cannot be read
     */
    public Optional<EObject> element(Address address) {
        return file(address.path()).flatMap(LoadedFile::root)
                .map(top -> address.id().equals(top.getId()) ? top : top.eResource().getEObject(address.id()));
    }

    /**
     * Returns a top-level element by its id.
     *
     * @param id an id
     * @return the element, or empty
     */
    public Optional<TopElement> top(String id) {
        return catalogue.byId(id).flatMap(row -> file(row.path())).flatMap(LoadedFile::root);
    }

    /**
     * Follows a reference. The only way from one file to another.
     *
     * @param reference what a getter returned: an element of the same file, an unresolved reference, or null
     * @return the element it stands for, or empty if it leads to nothing
     */
    public Optional<EObject> resolve(EObject reference) {
        if (reference == null || !reference.eIsProxy()) {
            return Optional.ofNullable(reference);
        }
        return addressOf(reference).flatMap(this::element);
    }

    /**
     * Returns where a reference leads or an element stands.
     *
     * @param object an element or an unresolved reference
     * @return its address, or empty if it has no id or leads out of the library
     */
    public Optional<Address> addressOf(EObject object) {
        if (object == null) {
            return Optional.empty();
        }
        if (object.eIsProxy()) {
            return LibraryUris.target((InternalEObject) object);
        }
        var resource = object.eResource();
        return resource == null || object.eContainer() == null && !(object instanceof TopElement) ? Optional.empty()
                : LibraryUris.target(resource.getURI().appendFragment(resource.getURIFragment(object)));
    }

    /**
     * Looks for changes on the disk and takes them in.
     *
     * @param monitor shows progress by files; may cancel
     * @return what changed
     * @throws IOException if the library's folder cannot be listed
     */
    public synchronized Changes refresh(IProgressMonitor monitor) throws IOException {
        var entries = new CatalogueScan(root, format).scan(catalogue.asMap(), monitor);
        var next = new Catalogue(entries);
        isKept &= next.isSameAs(catalogue);
        var changes = publish(next, Changes.between(catalogue, next));
        keep();
        return changes;
    }

    /**
     * Tries to hold the right to write this library until it is closed.
     *
     * @return true if this process holds it; false if another one does or the library cannot be written
     */
    public synchronized boolean holdLock() {
        try {
            if (lock == null) {
                lock = LibraryLock.tryTake(root).orElse(null);
            }
        } catch (IOException e) {
            System.getLogger(Library.class.getName()).log(System.Logger.Level.DEBUG, "The library is read-only", e);
        }
        return lock != null;
    }

    @Override
    public synchronized void close() {
        keep();
        try {
            if (lock != null) {
                lock.close();
            }
        } catch (IOException e) {
            System.getLogger(Library.class.getName()).log(System.Logger.Level.DEBUG, "The lock was lost", e);
        }
        lock = null;
    }

    /**
     * Saves an element over its file, or as a new one, and publishes it.
     *
     * @param element the element; it is not kept
     * @param base hash of the file it was made from, or empty for a new file
     * @return the new snapshot
     * @throws LibraryException if the file is not whole, was changed meanwhile or cannot be written
     */
    public synchronized LoadedFile save(TopElement element, Optional<String> base) throws LibraryException {
        var file = new LibrarySave(root, format, catalogue, lock != null).save(element, base);
        loaded.put(file.path(), new SoftReference<>(file));
        try {
            var entry = CatalogueScan.entry(LibraryFiles.stamp(root.resolve(file.path())), file);
            var next = catalogue.with(entry);
            isKept = false;
            publish(next, Changes.of(catalogue, next, file.path()));
        } catch (IOException e) {
            throw new LibraryException(file.path() + " was saved but cannot be read back: check the disk", e);
        }
        return file;
    }

    /**
     * Tells a listener of every change that is taken in, on the thread that takes it in.
     *
     * @param listener told what changed
     * @return removes the listener when run
     */
    public Runnable onChange(Consumer<Changes> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private Changes publish(Catalogue next, Changes changes) {
        catalogue = next;
        changes.changed().forEach(path -> {
            if (!isLoadedAs(path, next)) {
                loaded.remove(path);
            }
        });
        changes.removed().forEach(loaded::remove);
        if (!changes.isEmpty()) {
            listeners.forEach(listener -> listener.accept(changes));
        }
        return changes;
    }

    private boolean isLoadedAs(String path, Catalogue next) {
        var reference = loaded.get(path);
        var file = reference == null ? null : reference.get();
        return file != null && next.entry(path).filter(entry -> entry.hash().equals(file.hash())).isPresent();
    }

    /**
     * Keeps the facts on the disk for the next start. Done when the library is opened and closed and when there is
     * time, not on a save; without it the next start only takes longer.
     */
    public synchronized void keep() {
        if (isKept) {
            return;
        }
        try {
            kept.write(catalogue.entries());
            isKept = true;
        } catch (IOException e) {
            System.getLogger(Library.class.getName())
                    .log(System.Logger.Level.INFO, "The catalogue cannot be kept for the next start", e);
        }
    }
}
