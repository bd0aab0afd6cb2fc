// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.take;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.model.Shop;
import org.benchlore.model.TopElement;
import org.benchlore.model.compare.Merge;
import org.benchlore.model.compare.Sentences;
import org.benchlore.model.compare.Words;
import org.benchlore.pack.PackException;
import org.benchlore.pack.Stripping;
import org.benchlore.pack.zip.PackFile;
import org.benchlore.pack.zip.PackPaths;
import org.benchlore.store.BookFormat;
import org.benchlore.store.Hash;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Compares the files of a pack with a library. The library's own file is compared in the form that it would have in this
 * pack, so that prices and names that the pack does not carry are no difference, and stay when the pack is taken.
 */
final class Comparing {

    private static final int MOST_DIFFERENCES = 8;

    private final Library library;
    private final PackFile pack;
    private final Taken taken;
    private final Stripping stripping;
    private final BookFormat format = new BookFormat();
    private final Words words = new Words();

    Comparing(Library library, PackFile pack, Taken taken) {
        this.library = library;
        this.pack = pack;
        this.taken = taken;
        var files = pack.manifest().files();
        this.stripping = new Stripping(library, pack.manifest().extras(), address -> files.containsKey(address.path()),
                file -> files.containsKey("media/" + file));
    }

    /**
     * A file with what would be written.
     *
     * @param item what it is to the library
     * @param bytes the new content of the file; made only when it is wanted
     */
    record Compared(Item item, Supplier<byte[]> bytes) {
    }

    Compared compare(String path) throws IOException, PackException {
        var bytes = pack.read(path);
        if (PackPaths.isMedia(path)) {
            return media(path, bytes);
        }
        var theirs = pack.element(path);
        if (theirs instanceof Shop shop) {
            return shop(path, shop);
        }
        var elsewhere = library.catalogue().byId(theirs.getId()).map(Row::path).filter(other -> !other.equals(path));
        if (elsewhere.isPresent()) {
            return compared(path, theirs, Verdict.CONFLICT, "its id is used by " + elsewhere.get(), List.of(), null);
        }
        if (!Files.exists(library.root().resolve(path), java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            return compared(path, theirs, Verdict.NEW, "", List.of(), () -> bytes);
        }
        return existing(path, theirs, bytes);
    }

    private Compared existing(String path, TopElement theirs, byte[] bytes) {
        var own = library.file(path).filter(file -> file.isWhole()).flatMap(file -> file.root());
        if (own.isEmpty()) {
            return compared(path, theirs, Verdict.CONFLICT, "the library's own file cannot be read whole: mend it first", List.of(), null);
        }
        var base = stripping.bytes(path, own.get());
        if (Arrays.equals(base, bytes) || library.file(path).orElseThrow().hash().equals(Hash.of(bytes))) {
            return compared(path, theirs, Verdict.SAME, "", List.of(), null);
        }
        var packedOwn = format.read(path, base).root().orElseThrow();
        var differences = Sentences.between(packedOwn, theirs, words);
        return judged(path, own.get(), theirs, shortened(differences),
                () -> merged(path, packedOwn, own.get(), theirs, bytes));
    }

    private Compared judged(String path, TopElement own, TopElement theirs, List<String> differences, Supplier<byte[]> merged) {
        var hash = library.file(path).orElseThrow().hash();
        var earlier = taken.entry(path);
        int revisions = revision(theirs) - revision(own);
        if (revisions < 0) {
            return compared(path, theirs, Verdict.OLDER, "the library has revision " + revision(own) + ", the pack " + revision(theirs),
                    differences, merged);
        }
        if (earlier.isEmpty() || !earlier.get().sum().equals(hash)) {
            return compared(path, theirs, Verdict.CONFLICT, earlier.isEmpty() ? "it was made here and is different there"
                    : "it was changed here since it was taken", differences, merged);
        }
        if (pack.manifest().made().isBefore(earlier.get().made()) && revisions == 0) {
            return compared(path, theirs, Verdict.OLDER, "it was taken from a later pack, of " + earlier.get().made(), differences, merged);
        }
        return compared(path, theirs, Verdict.CHANGED, "", differences, merged);
    }

    private static int revision(TopElement top) {
        return top instanceof Procedure procedure && procedure.getRevision() != null ? procedure.getRevision() : 0;
    }

    private static List<String> shortened(List<String> sentences) {
        if (sentences.size() <= MOST_DIFFERENCES) {
            return sentences;
        }
        var some = new ArrayList<>(sentences.subList(0, MOST_DIFFERENCES));
        some.add("and " + (sentences.size() - MOST_DIFFERENCES) + " more");
        return some;
    }

    /** What the pack does not carry stays as it is here; everything else becomes what the pack says. */
    private byte[] merged(String path, TopElement packedOwn, TopElement own, TopElement theirs, byte[] bytes) {
        var result = new Merge(Optional.of(packedOwn), own, theirs, words).result();
        if (!result.conflicts().isEmpty()) {
            return bytes;
        }
        var merged = format.write(path, result.element());
        return format.read(path, merged).isWhole() ? merged : bytes;
    }

    private Compared media(String path, byte[] bytes) throws IOException {
        var file = library.root().resolve(path);
        if (!Files.exists(file, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            return new Compared(new Item(path, path, Verdict.NEW, "", List.of()), () -> bytes);
        }
        boolean isSame = Files.isRegularFile(file) && isSame(Files.readAllBytes(file), bytes);
        return new Compared(new Item(path, path, isSame ? Verdict.SAME : Verdict.CONFLICT,
                isSame ? "" : "another picture of that name is here", List.of()), () -> bytes);
    }

    /** A picture goes into a pack cleaned, so the one it was made from is the same. */
    private static boolean isSame(byte[] own, byte[] theirs) {
        try {
            return Arrays.equals(own, theirs) || Arrays.equals(MediaShelf.clean(own), theirs);
        } catch (MediaException e) {
            return false;
        }
    }

    /** People are added to the shop; nothing else of another shop comes in. */
    private Compared shop(String path, Shop theirs) {
        var own = library.top(Kind.SHOP.word()).filter(Shop.class::isInstance).map(Shop.class::cast);
        if (own.isEmpty()) {
            return compared(path, theirs, Verdict.NEW, "", List.of(), () -> format.write(path, theirs));
        }
        var copy = (Shop) format.read(path, format.write(path, own.get())).root().orElseThrow();
        var added = new ArrayList<String>();
        for (var person : theirs.getPeople()) {
            var known = copy.getPeople().stream().filter(it -> person.getId().equals(it.getId())).findFirst();
            if (known.isEmpty()) {
                copy.getPeople().add(EcoreUtil.copy(person));
                added.add("added: " + person.getTitle());
            } else if (!java.util.Objects.equals(known.get().getTitle(), person.getTitle())) {
                return compared(path, theirs, Verdict.CONFLICT, "'" + person.getId() + "' is somebody else here", List.of(), null);
            }
        }
        return added.isEmpty() ? compared(path, theirs, Verdict.SAME, "", List.of(), null)
                : compared(path, theirs, Verdict.CHANGED, "people of the other shop are added", added, () -> format.write(path, copy));
    }

    private static Compared compared(String path, TopElement theirs, Verdict verdict, String reason, List<String> differences,
            Supplier<byte[]> bytes) {
        var title = theirs.getTitle() == null || theirs.getTitle().isBlank() ? theirs.getId() : theirs.getTitle();
        return new Compared(new Item(path, title, verdict, reason, List.copyOf(differences)), bytes);
    }
}
