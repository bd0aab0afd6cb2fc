// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.check.review.PackEntry;
import org.benchlore.check.review.PackRegister;
import org.benchlore.model.Kind;
import org.benchlore.pack.html.HtmlPack;
import org.benchlore.pack.html.PackInfo;
import org.benchlore.pack.learn.LearnerPage;
import org.benchlore.pack.learn.Story;
import org.benchlore.pack.zip.LibraryPack;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

/** Makes packs of a library in the forms that are wanted, and notes in the library what went out. */
public final class Packing {

    /** A form of a pack. */
    public enum Form {
        /** A folder of pages for any browser. */
        HTML,
        /** A zip file for another library. */
        LIBRARY
    }

    /** Name of the library pack beside pages. */
    public static final String LIBRARY_NAME = "library-pack.zip";

    private final Library library;
    private final LocalDate day;

    /**
     * Makes packs.
     *
     * @param library the shop's library
     * @param day the day on which they are made
     */
    public Packing(Library library, LocalDate day) {
        this.library = library;
        this.day = day;
    }

    /**
     * What was made.
     *
     * @param selection what went in and what did not
     * @param files how many files of the library went in, pictures included
     * @param pages how many pages were written, 0 without HTML
     * @param written the places that were written
     * @param leftOut what is spoken of and stayed out
     */
    public record Made(Selection selection, int files, int pages, List<Path> written, List<LeftOut> leftOut) {
    }

    /**
     * Makes a pack, all of it or nothing.
     *
     * @param request what is wanted
     * @param forms one form or both
     * @param withLearner whether the pages have a learner's way
     * @param out a new folder for pages; a new zip file where only the library is wanted
     * @param monitor shows progress; may cancel
     * @return what was made
     * @throws PackException with one plain sentence; then nothing is left behind
     */
    public Made make(PackRequest request, Set<Form> forms, boolean withLearner, Path out, IProgressMonitor monitor) throws PackException {
        var progress = SubMonitor.convert(monitor, 10);
        var wanted = EnumSet.copyOf(forms);
        var selection = Selector.of(library, request);
        if (Files.exists(out) && (!Files.isDirectory(out) || out.toFile().list().length > 0)) {
            throw new PackException("'" + out + "' is there already and is not written over: name a new one.");
        }
        try (var packed = PackedLibrary.of(library, selection, progress.split(4))) {
            int pages = 0;
            var written = new ArrayList<Path>();
            if (wanted.contains(Form.HTML)) {
                pages = html(packed, withLearner, out, progress.split(5));
                written.add(out);
            }
            if (wanted.contains(Form.LIBRARY)) {
                written.add(libraryPack(packed, wanted.contains(Form.HTML) ? out.resolve(LIBRARY_NAME) : out));
            }
            record(selection, out);
            return new Made(selection, packed.paths().size(), pages, written, packed.leftOut());
        } catch (IOException e) {
            throw new PackException("The pack cannot be made: check the free space of the disk.", e);
        }
    }

    private int html(PackedLibrary packed, boolean withLearner, Path out, IProgressMonitor monitor) throws IOException, PackException {
        var info = new PackInfo(packed.selection().title(), shop(), day, packed.isInvented(), packed.leftOut());
        try (var inside = packed.open()) {
            var learner = withLearner ? Optional.of(learner(packed, inside, info)) : Optional.<String>empty();
            return new HtmlPack(packed, inside, info, learner).write(out, monitor);
        } catch (LibraryException e) {
            throw new PackException(e.getMessage(), e);
        }
    }

    private String learner(PackedLibrary packed, Library inside, PackInfo info) {
        var stripping = new Stripping(library, Set.of(), address -> true, file -> false);
        var story = Story.of(library, stripping, packed.selection().procedures());
        return new LearnerPage(inside, story).body(info.title(), info.isInvented());
    }

    private Path libraryPack(PackedLibrary packed, Path out) throws IOException, PackException {
        LibraryPack.write(packed, LibraryPack.manifest(packed, shop(), day), out);
        return out;
    }

    private String shop() {
        return library.catalogue().rows(Kind.SHOP).map(Row::title).findFirst().orElse("the shop");
    }

    /** That the note cannot be kept is no reason to have no pack; a library may be read-only. */
    private void record(Selection selection, Path out) {
        try {
            PackRegister.in(library.root()).record(new PackEntry(day, selection.title(), out.toAbsolutePath().normalize().toString(),
                    selection.procedures()));
        } catch (IOException e) {
            System.getLogger(Packing.class.getName()).log(System.Logger.Level.INFO, "What went out was not noted in the library", e);
        }
    }
}
