// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.html;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

import org.benchlore.model.Kind;
import org.benchlore.page.HtmlRenderer;
import org.benchlore.pack.Folders;
import org.benchlore.pack.PackException;
import org.benchlore.pack.PackedLibrary;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

/**
 * Writes a pack as a folder of HTML pages that opens from a memory stick: no server, no network, no program. Every page is
 * made of the packed library, so that nothing can be on a page that is not in the pack.
 */
public final class HtmlPack {

    private static final String[] CARRIED = {"pack.css", "pack.js", "minisearch.js", "minisearch-license.txt"};

    private final PackedLibrary packed;
    private final Library library;
    private final PackInfo info;
    private final Optional<String> learner;

    /**
     * Makes the pages of a pack.
     *
     * @param packed what goes in
     * @param library the same, opened
     * @param info what every page says of the pack
     * @param learner body of the learner's page, or empty
     */
    public HtmlPack(PackedLibrary packed, Library library, PackInfo info, Optional<String> learner) {
        this.packed = packed;
        this.library = library;
        this.info = info;
        this.learner = learner;
    }

    /**
     * Writes the folder whole or not at all.
     *
     * @param out a folder that is missing or empty
     * @param monitor shows progress by pages; may cancel
     * @return how many pages it has
     * @throws PackException if the folder is in use or cannot be written
     */
    public int write(Path out, IProgressMonitor monitor) throws PackException {
        var target = out.toAbsolutePath().normalize();
        var part = target.resolveSibling("." + target.getFileName() + ".part");
        try {
            refuseUsed(out, target);
            Folders.delete(part);
            int pages = fill(Files.createDirectories(part), monitor);
            Files.deleteIfExists(target);
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            return pages;
        } catch (IOException e) {
            throw new PackException("'" + out + "' cannot be written: check the place and its free space.", e);
        } finally {
            deleteQuietly(part);
        }
    }

    private static void refuseUsed(Path out, Path target) throws IOException, PackException {
        if (Files.isDirectory(target)) {
            try (var files = Files.list(target)) {
                if (files.findAny().isEmpty()) {
                    return;
                }
            }
        }
        if (Files.exists(target)) {
            throw new PackException("'" + out + "' is there already and is not written over: name a new folder.");
        }
    }

    private static void deleteQuietly(Path part) {
        try {
            Folders.delete(part);
        } catch (IOException e) {
            System.getLogger(HtmlPack.class.getName()).log(System.Logger.Level.WARNING, part + " is left over; delete it", e);
        }
    }

    private int fill(Path folder, IProgressMonitor monitor) throws IOException {
        int pages = elements(folder, monitor);
        var shell = new Shell(info, learner.isPresent());
        var scripts = "<script src=\"assets/minisearch.js\" defer></script>\n<script src=\"assets/search-data.js\" defer></script>\n";
        write(folder.resolve("index.html"), shell.page(new Shell.Content("contents", info.title(), "", "", "", scripts,
                new Contents(library, info).body())));
        if (learner.isPresent()) {
            write(folder.resolve("learn.html"), shell.page(new Shell.Content("learn", "Learner's way: " + info.title(), "", "", "", "",
                    learner.get())));
        }
        carried(folder);
        return pages + 1 + (learner.isPresent() ? 1 : 0);
    }

    private int elements(Path folder, IProgressMonitor monitor) throws IOException {
        var rows = library.catalogue().rows().filter(row -> row.kind() != Kind.SHOP).toList();
        var progress = SubMonitor.convert(monitor, "Writing pages", rows.size());
        var pages = new ElementPages(library);
        var search = new SearchData();
        for (Row row : rows) {
            var element = library.top(row.id()).orElseThrow();
            var page = pages.page(element);
            search.add(row, element, page);
            write(folder.resolve("pages").resolve(row.id() + ".html"), new Shell(info, learner.isPresent()).page(new Shell.Content(row.id()
                    + ":" + ElementPages.revision(element), page.title(), ElementPages.revision(element), ElementPages.mark(element), "../",
                    "", pages.body(element, page))));
            progress.split(1);
        }
        write(folder.resolve("assets/search-data.js"), search.script());
        return rows.size();
    }

    private void carried(Path folder) throws IOException {
        write(folder.resolve("assets/page.css"), HtmlRenderer.style());
        for (var name : CARRIED) {
            try (var stream = HtmlPack.class.getResourceAsStream("carried/" + name)) {
                Files.copy(stream, folder.resolve("assets").resolve(name));
            }
        }
        for (var path : packed.paths()) {
            if (path.startsWith("media/")) {
                Files.createDirectories(folder.resolve(path).getParent());
                Files.write(folder.resolve(path), packed.bytes(path));
            }
        }
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }
}
