// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Set;
import java.util.TreeMap;
import java.util.Map;

import org.benchlore.model.BookFactory;
import org.benchlore.pack.zip.LibraryPack;
import org.benchlore.pack.zip.Manifest;
import org.benchlore.store.BookFormat;
import org.benchlore.store.Hash;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.NullProgressMonitor;

/** Libraries for the tests of packs: copies of the demonstration library, and empty ones. */
public final class Shops {

    /** The day on which every pack of the tests is made. */
    public static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private final Path scratch;

    public Shops(Path scratch) {
        this.scratch = scratch;
    }

    /** A copy of the demonstration library that may be changed. */
    public Library demonstration(String name) {
        var folder = scratch.resolve(name);
        KnownLibrary.copy(folder, cache(folder));
        return open(folder);
    }

    private Path cache(Path folder) {
        return scratch.resolve("cache-" + folder.getFileName());
    }

    /** A library with nothing but a shop, which is marked as invented like what it will take. */
    public Library empty(String name) {
        try {
            var folder = Files.createDirectories(scratch.resolve(name));
            var shop = BookFactory.eINSTANCE.createShop();
            shop.setId("shop");
            shop.setFormatVersion(BookFormat.VERSION);
            shop.setTitle("Shop " + name);
            shop.setInvented(true);
            Files.write(folder.resolve("shop.xmi"), new BookFormat().write("shop.xmi", shop));
            return open(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Library open(Path folder) {
        try {
            return Library.open(folder, cache(folder), new NullProgressMonitor());
        } catch (LibraryException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Changes words in a file and has the library see it. */
    public static void replace(Library library, String path, String from, String to) {
        try {
            var file = library.root().resolve(path);
            var text = Files.readString(file);
            if (!text.contains(from)) {
                throw new IllegalArgumentException(path + " has no '" + from + "'");
            }
            Files.writeString(file, text.replace(from, to));
            library.refresh(new NullProgressMonitor());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Packs and returns the list of contents. */
    public Manifest pack(Library library, PackRequest request, Path out) {
        try (var packed = PackedLibrary.of(library, Selector.of(library, request), new NullProgressMonitor())) {
            var manifest = LibraryPack.manifest(packed, "Test shop", DAY);
            LibraryPack.write(packed, manifest, out);
            return manifest;
        } catch (IOException | PackException e) {
            throw new IllegalStateException(e);
        }
    }

    public static PackRequest whole(Extra... extras) {
        return new PackRequest("", java.util.List.of(), java.util.List.of(), java.util.List.of(), Set.of(), false, false, Set.of(extras));
    }

    /** Sums of every file below a folder but the cache and the lock. */
    public static Map<String, String> sums(Path folder) {
        var sums = new TreeMap<String, String>();
        try (var files = Files.walk(folder)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var path = folder.relativize(file).toString();
                if (!path.startsWith(".benchlore")) {
                    sums.put(path, Hash.of(Files.readAllBytes(file)));
                }
            }
            return sums;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
