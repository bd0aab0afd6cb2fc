// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

import org.benchlore.store.AtomicFile;
import org.benchlore.store.Hash;

/**
 * Takes pictures and drawings into a library. What a file is, its content tells; what is in it beside the picture is
 * taken out: place and time, comments, scripts. It lies in {@code media} under a name made of its content, so that the
 * same picture lies there once. A PDF is kept as it is, since nobody opens it here.
 */
public final class MediaShelf {

    /** Greatest size of a file, in bytes: 25 MB. */
    public static final int MOST_BYTES = 25_000_000;

    /** Greatest size of a drawing, in bytes: 2 MB. */
    public static final int MOST_SVG_BYTES = 2_000_000;

    private static final String FOLDER = "media";
    private static final int NAME_LENGTH = 32;
    private static final Set<MediaType> TURNED = Set.of(MediaType.PNG, MediaType.JPEG);
    private static final int[] TURNS = {1, 6, 3, 8};

    private final Path root;

    /**
     * Makes the shelf of a library.
     *
     * @param root the library's folder
     */
    public MediaShelf(Path root) {
        this.root = root;
    }

    /**
     * A file on the shelf.
     *
     * @param path path below the library with forward slashes
     * @param type what it is
     */
    public record Stored(String path, MediaType type) {

        /**
         * Returns the file as an element names it.
         *
         * @return path below the folder media
         */
        public String file() {
            return path.substring(FOLDER.length() + 1);
        }
    }

    /**
     * Cleans a file without keeping it, for showing it before it is taken in.
     *
     * @param bytes the content of a file
     * @return the cleaned content
     * @throws MediaException if it is no picture, drawing or PDF, is too large or is damaged
     */
    public static byte[] clean(byte[] bytes) throws MediaException {
        var type = type(bytes);
        return switch (type) {
            case PNG -> PictureCleaner.png(bytes);
            case JPEG -> jpeg(bytes);
            case WEBP -> PictureCleaner.webp(bytes);
            case GIF -> PictureCleaner.gif(bytes);
            case SVG -> SvgCleaner.clean(bytes);
            case PDF -> bytes;
        };
    }

    private static MediaType type(byte[] bytes) throws MediaException {
        if (bytes.length > MOST_BYTES) {
            throw tooLarge(MOST_BYTES);
        }
        var type = MediaType.of(bytes).orElseThrow(() -> new MediaException("This is no picture that can be kept here:"
                + " choose a PNG, JPEG, WebP, GIF, SVG or PDF file"));
        if (type == MediaType.SVG && bytes.length > MOST_SVG_BYTES) {
            throw tooLarge(MOST_SVG_BYTES);
        }
        return type;
    }

    private static MediaException tooLarge(int most) {
        return new MediaException("The file is larger than " + most / 1_000_000 + " MB: make it smaller and add it again");
    }

    /** The camera's 'this side up' becomes pixels; where that cannot be, it stays as the only thing noted. */
    private static byte[] jpeg(byte[] bytes) throws MediaException {
        var cleaned = JpegCleaner.clean(bytes);
        if (cleaned.orientation() == 1) {
            return cleaned.bytes();
        }
        try {
            return Turning.upright(cleaned.bytes(), MediaType.JPEG, cleaned.orientation());
        } catch (MediaException e) {
            System.getLogger(MediaShelf.class.getName()).log(System.Logger.Level.DEBUG, "Kept as a note of orientation", e);
            return Orientation.put(cleaned.bytes(), cleaned.orientation());
        }
    }

    /**
     * Takes a file in.
     *
     * @param bytes the content of a file
     * @return where it lies
     * @throws MediaException if it is no picture, drawing or PDF, is too large, damaged, or cannot be written
     */
    public Stored add(byte[] bytes) throws MediaException {
        return store(clean(bytes));
    }

    /**
     * Turns a picture on the shelf; the unturned one stays, since other elements may show it.
     *
     * @param path path of a PNG or JPEG file on the shelf
     * @param quarters how many quarter turns to the right
     * @return where the turned one lies
     * @throws MediaException if there is no such picture or it cannot be turned
     */
    public Stored turn(String path, int quarters) throws MediaException {
        var bytes = read(path);
        var type = MediaType.of(bytes).filter(TURNED::contains)
                .orElseThrow(() -> new MediaException("Only PNG and JPEG pictures can be turned"));
        int turns = Math.floorMod(quarters, TURNS.length);
        return turns == 0 ? new Stored(path, type) : store(Turning.upright(bytes, type, TURNS[turns]));
    }

    /**
     * Reads a picture on the shelf as it may be shown: cleaned, since a library may come from anywhere.
     *
     * @param file path below the folder media
     * @return the cleaned content
     * @throws MediaException if there is no such picture, or it is none that can be shown
     */
    public byte[] shown(String file) throws MediaException {
        return clean(read(FOLDER + "/" + file));
    }

    /**
     * Takes a file away again that was taken in a moment ago and that nothing refers to.
     *
     * @param stored what {@link #add} returned
     * @throws MediaException if it cannot be deleted
     */
    public void takeAway(Stored stored) throws MediaException {
        try {
            Files.deleteIfExists(root.resolve(stored.path()));
        } catch (IOException e) {
            throw new MediaException(stored.path() + " cannot be deleted: delete it by hand", e);
        }
    }

    /**
     * Tells whether the shelf holds the same file already.
     *
     * @param cleaned a cleaned file
     * @return true if adding it would add nothing
     */
    public boolean holds(byte[] cleaned) {
        return MediaType.of(cleaned).filter(type -> Files.exists(root.resolve(path(cleaned, type)))).isPresent();
    }

    private byte[] read(String path) throws MediaException {
        var file = root.resolve(path).normalize();
        if (!file.startsWith(root.resolve(FOLDER))) {
            throw new MediaException(path + " is no picture of this library");
        }
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw tooLarge(MOST_BYTES);
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new MediaException(path + " cannot be read: check that the file is there", e);
        }
    }

    private Stored store(byte[] cleaned) throws MediaException {
        var type = type(cleaned);
        var path = path(cleaned, type);
        try {
            if (!Files.exists(root.resolve(path))) {
                AtomicFile.write(root.resolve(path), cleaned);
            }
            return new Stored(path, type);
        } catch (IOException e) {
            throw new MediaException("The picture was not kept: the library cannot be written; check its permissions and"
                    + " the free space", e);
        }
    }

    private static String path(byte[] cleaned, MediaType type) {
        return FOLDER + "/" + Hash.of(cleaned).substring(0, NAME_LENGTH) + "." + type.ending();
    }
}
