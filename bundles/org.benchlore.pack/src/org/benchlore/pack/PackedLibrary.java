// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.edit.media.MediaType;
import org.benchlore.model.BookFactory;
import org.benchlore.model.Kind;
import org.benchlore.model.Media;
import org.benchlore.model.Shop;
import org.benchlore.model.TopElement;
import org.benchlore.pack.zip.PackPaths;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * The files of a pack in a folder of their own: a small library in the form in which it leaves the shop. Everything that
 * is made of a pack is made of this, so that nothing else can come along. Closing it deletes the folder.
 */
public final class PackedLibrary implements AutoCloseable {

    private static final String MEDIA = "media";

    private final Path folder;
    private final Path facts;
    private final Selection selection;
    private final SortedSet<String> paths = new TreeSet<>();
    private final SortedMap<String, String> mediaLeftOut = new TreeMap<>();

    private PackedLibrary(Path scratch, Selection selection) {
        this.folder = scratch.resolve("library");
        this.facts = scratch.resolve("facts");
        this.selection = selection;
    }

    /**
     * Makes the files.
     *
     * @param library where they come from
     * @param selection what goes in
     * @param monitor shows progress by files; may cancel
     * @return the packed library in a temporary folder
     * @throws IOException if there is no room for it
     */
    public static PackedLibrary of(Library library, Selection selection, IProgressMonitor monitor) throws IOException {
        var packed = new PackedLibrary(Files.createTempDirectory("benchlore-pack"), selection);
        try {
            packed.fill(library, monitor);
            return packed;
        } catch (IOException | RuntimeException e) {
            packed.close();
            throw e;
        }
    }

    private void fill(Library library, IProgressMonitor monitor) throws IOException {
        Files.createDirectories(folder);
        var progress = SubMonitor.convert(monitor, "Packing", selection.rows().size() + 1);
        var stripping = new Stripping(library, selection.request().extras(), selection::has, file -> paths.contains(MEDIA + "/" + file));
        for (var row : selection.rows().values()) {
            var top = library.file(row.path()).flatMap(file -> file.root());
            if (top.isPresent()) {
                media(library.root(), top.get());
                put(row.path(), stripping.bytes(row.path(), top.get()));
            }
            progress.split(1);
        }
        if (!selection.people().isEmpty()) {
            people(library, stripping);
        }
    }

    /** Of the shop only the people who are named come along. */
    private void people(Library library, Stripping stripping) throws IOException {
        var original = (Shop) library.top(Kind.SHOP.word()).orElseThrow();
        var shop = BookFactory.eINSTANCE.createShop();
        shop.setId(original.getId());
        shop.setFormatVersion(original.getFormatVersion());
        shop.setTitle(original.getTitle());
        shop.setInvented(original.isInvented());
        original.getPeople().stream().filter(person -> selection.people().stream().anyMatch(it -> it.id().equals(person.getId())))
                .forEach(person -> {
                    var copy = EcoreUtil.copy(person);
                    copy.getTraining().clear();
                    shop.getPeople().add(copy);
                });
        var path = Kind.SHOP.path(Kind.SHOP.word());
        put(path, stripping.bytes(path, shop));
    }

    /** Before the element itself, which loses what is said of pictures that stay out. */
    private void media(Path root, TopElement top) throws IOException {
        for (var file : files(top)) {
            media(root, file);
        }
    }

    private static List<String> files(TopElement top) {
        var found = new ArrayList<String>();
        top.eAllContents().forEachRemaining(object -> {
            if (object instanceof Media media && media.getFile() != null) {
                found.add(media.getFile());
            }
        });
        return found;
    }

    private void media(Path root, String file) throws IOException {
        var path = MEDIA + "/" + file;
        var source = root.resolve(path).normalize();
        if (paths.contains(path) || mediaLeftOut.containsKey(file)) {
            return;
        }
        if (!PackPaths.isMedia(path) || !source.startsWith(root.resolve(MEDIA)) || !Files.isRegularFile(source)) {
            mediaLeftOut.put(file, "is no file of the folder media");
            return;
        }
        try {
            var bytes = Files.readAllBytes(source);
            if (MediaType.of(bytes).filter(MediaType.PDF::equals).isPresent()) {
                mediaLeftOut.put(file, "is a document, which is never copied");
            } else {
                put(path, MediaShelf.clean(bytes));
            }
        } catch (MediaException e) {
            mediaLeftOut.put(file, "is no picture that can be shown");
        }
    }

    private void put(String path, byte[] bytes) throws IOException {
        var file = folder.resolve(path);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
        paths.add(path);
    }

    /**
     * Returns the folder, which is a library.
     *
     * @return a temporary folder
     */
    public Path folder() {
        return folder;
    }

    /**
     * Opens it.
     *
     * @return the library; to be closed by the caller, before this
     * @throws LibraryException if it cannot be read any more
     */
    public Library open() throws LibraryException {
        return Library.open(folder, facts, new NullProgressMonitor());
    }

    /**
     * Returns what was chosen.
     *
     * @return the selection
     */
    public Selection selection() {
        return selection;
    }

    /**
     * Returns every file.
     *
     * @return paths below the folder, in order
     */
    public SortedSet<String> paths() {
        return paths;
    }

    /**
     * Reads a file.
     *
     * @param path one of the paths
     * @return its bytes
     * @throws IOException if it cannot be read
     */
    public byte[] bytes(String path) throws IOException {
        return Files.readAllBytes(folder.resolve(path));
    }

    /**
     * Returns what is spoken of and stays out, pictures included.
     *
     * @return in order
     */
    public List<LeftOut> leftOut() {
        var all = new ArrayList<>(selection.leftOut());
        mediaLeftOut.forEach((file, reason) -> all.add(new LeftOut("picture " + file, reason)));
        all.sort(Comparator.naturalOrder());
        return all;
    }

    /**
     * Tells whether anything in it is invented.
     *
     * @return true if one of its elements is
     */
    public boolean isInvented() {
        return selection.rows().values().stream().anyMatch(Row::invented);
    }

    @Override
    public void close() throws IOException {
        Folders.delete(folder.getParent());
    }
}
