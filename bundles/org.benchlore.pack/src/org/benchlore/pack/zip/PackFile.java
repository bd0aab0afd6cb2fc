// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.zip;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.pack.PackException;
import org.benchlore.store.BookFormat;
import org.benchlore.store.FileProblem;
import org.benchlore.store.Hash;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;

/**
 * A library pack that was looked through before anything of it is used: every name, size, sum and file. Nothing is ever
 * unpacked to a place that the pack names.
 */
public final class PackFile implements AutoCloseable {

    private static final int LARGEST_MANIFEST = 16 << 20;

    private final ZipFile zip;
    private final Limits limits;
    private final Manifest manifest;
    private final long manifestSize;
    private final BookFormat format = new BookFormat();

    private PackFile(ZipFile zip, Limits limits) throws IOException, PackException {
        this.zip = zip;
        this.limits = limits;
        var list = bytes(Manifest.NAME, LARGEST_MANIFEST);
        this.manifestSize = list.length;
        this.manifest = Manifest.read(list);
    }

    /**
     * Opens a pack and looks through all of it.
     *
     * @param file a zip file
     * @param monitor shows progress by files; may cancel
     * @return the pack
     * @throws PackException with one plain sentence if anything of it is not as it should be
     */
    public static PackFile open(Path file, IProgressMonitor monitor) throws PackException {
        return open(file, Limits.usual(), monitor);
    }

    /**
     * Opens a pack with limits of one's own.
     *
     * @param file a zip file
     * @param limits how much it may hold
     * @param monitor shows progress by files; may cancel
     * @return the pack
     * @throws PackException with one plain sentence if anything of it is not as it should be
     */
    public static PackFile open(Path file, Limits limits, IProgressMonitor monitor) throws PackException {
        if (!Files.isRegularFile(file)) {
            throw new PackException("There is no pack at " + file + ": name a zip file that 'pack' made.");
        }
        ZipFile zip = null;
        try {
            var entries = ZipEntries.of(file);
            check(entries, limits);
            zip = new ZipFile(file.toFile());
            var pack = new PackFile(zip, limits);
            pack.compare(entries);
            pack.checkAll(monitor);
            return pack;
        } catch (ZipException | IllegalArgumentException e) {
            close(zip);
            throw new PackException(ZipEntries.noZip().getMessage(), e);
        } catch (IOException e) {
            close(zip);
            throw new PackException("The pack " + file + " cannot be read: check that its disk is there, or have it sent again.", e);
        } catch (PackException | OperationCanceledException e) {
            close(zip);
            throw e;
        }
    }

    private static void close(ZipFile zip) {
        try {
            if (zip != null) {
                zip.close();
            }
        } catch (IOException e) {
            System.getLogger(PackFile.class.getName()).log(System.Logger.Level.DEBUG, "A refused pack could not be closed", e);
        }
    }

    private static void check(List<ZipEntries.Entry> entries, Limits limits) throws PackException {
        if (entries.size() > limits.files() + 1) {
            throw refused("holds " + entries.size() + " files, more than " + limits.files());
        }
        var names = new HashSet<String>();
        long total = 0;
        for (var entry : entries) {
            check(entry, limits);
            if (!names.add(entry.name().toLowerCase(Locale.ROOT))) {
                throw refused("holds '" + Manifest.plain(entry.name()) + "' twice");
            }
            total += entry.size();
        }
        if (total > limits.totalBytes()) {
            throw refused("would take more than " + limits.totalBytes() / 1_000_000 + " MB");
        }
    }

    private static void check(ZipEntries.Entry entry, Limits limits) throws PackException {
        var name = Manifest.plain(entry.name());
        if (!entry.isRegular()) {
            throw refused("holds '" + name + "', which is a folder or a link and no file");
        }
        if (!entry.name().equals(Manifest.NAME) && !PackPaths.isAllowed(entry.name())) {
            throw refused("holds '" + name + "', which is no place of a library's file");
        }
        if (!entry.isReadable()) {
            throw refused("holds '" + name + "' in a form that cannot be read");
        }
        long most = entry.name().equals(Manifest.NAME) ? LARGEST_MANIFEST : limits.fileBytes();
        if (entry.size() > most) {
            throw refused("holds '" + name + "' with more than " + most / 1_000_000 + " MB");
        }
        if (entry.size() > limits.freeBytes() && entry.size() / limits.ratio() > entry.packed()) {
            throw refused("holds '" + name + "', which would grow more than " + limits.ratio() + " times when unpacked");
        }
    }

    private static PackException refused(String why) {
        return new PackException("The pack is refused, nothing was taken: it " + why + ".");
    }

    private void compare(List<ZipEntries.Entry> entries) throws PackException {
        var missing = new HashSet<>(manifest.files().keySet());
        for (var entry : entries) {
            if (!entry.name().equals(Manifest.NAME) && !missing.remove(entry.name())) {
                throw refused("holds '" + Manifest.plain(entry.name()) + "', which its " + Manifest.NAME + " does not name");
            }
            if (entry.size() != size(entry.name())) {
                throw refused("holds '" + Manifest.plain(entry.name()) + "' with another size than it says");
            }
        }
        if (!missing.isEmpty()) {
            throw refused("lacks '" + Manifest.plain(missing.iterator().next()) + "', which its " + Manifest.NAME + " names");
        }
    }

    private long size(String name) {
        return name.equals(Manifest.NAME) ? manifestSize : manifest.files().get(name).size();
    }

    private void checkAll(IProgressMonitor monitor) throws IOException, PackException {
        var progress = SubMonitor.convert(monitor, "Looking through the pack", manifest.files().size());
        for (var path : manifest.files().keySet()) {
            var bytes = read(path);
            if (PackPaths.isMedia(path)) {
                media(path, bytes);
            } else {
                element(path, bytes);
            }
            progress.split(1);
        }
    }

    private static void media(String path, byte[] bytes) throws PackException {
        try {
            if (!java.util.Arrays.equals(MediaShelf.clean(bytes), bytes)) {
                throw refused("holds '" + path + "', a picture with more in it than a picture");
            }
        } catch (MediaException e) {
            throw new PackException(refused("holds '" + path + "', which is no picture that can be shown").getMessage(), e);
        }
    }

    private TopElement element(String path, byte[] bytes) throws PackException {
        var file = format.read(path, bytes);
        var top = file.root().filter(root -> file.isWhole() && placeOf(root).equals(path));
        return top.orElseThrow(() -> refused("holds '" + path + "', which cannot be read: " + Manifest.plain(file.problems().stream()
                .findFirst().map(FileProblem::reason).orElse("it is another element than its name says"))));
    }

    private static String placeOf(TopElement top) {
        try {
            return Kind.of(top.eClass()).map(kind -> kind.path(top.getId())).orElse("");
        } catch (IllegalArgumentException e) {
            return "";
        }
    }

    /**
     * Returns the list of contents.
     *
     * @return the list
     */
    public Manifest manifest() {
        return manifest;
    }

    /**
     * Reads a file, and its sum again.
     *
     * @param path a path of the list of contents
     * @return its bytes
     * @throws IOException if the pack cannot be read any more
     * @throws PackException if it is not what the list says
     */
    public byte[] read(String path) throws IOException, PackException {
        var expected = manifest.files().get(path);
        var bytes = bytes(path, limits.fileBytes());
        if (bytes.length != expected.size() || !Hash.of(bytes).equals(expected.sum())) {
            throw refused("holds '" + path + "' with another sum than its " + Manifest.NAME + " says");
        }
        return bytes;
    }

    /**
     * Reads an element.
     *
     * @param path a path of the list of contents that is no picture
     * @return the element
     * @throws IOException if the pack cannot be read any more
     * @throws PackException if it is not what the list says
     */
    public TopElement element(String path) throws IOException, PackException {
        return element(path, read(path));
    }

    private byte[] bytes(String name, long most) throws IOException, PackException {
        var entry = zip.getEntry(name);
        if (entry == null) {
            throw new PackException("This is no library pack: it has no " + Manifest.NAME + "; name a file that 'pack' made.");
        }
        try (InputStream stream = zip.getInputStream(entry)) {
            // The list may lie about sizes; what comes out of it is counted.
            var bytes = stream.readNBytes((int) Math.min(most + 1, Integer.MAX_VALUE - 8));
            if (bytes.length > most) {
                throw refused("holds '" + Manifest.plain(name) + "', which is larger than it says");
            }
            return bytes;
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
