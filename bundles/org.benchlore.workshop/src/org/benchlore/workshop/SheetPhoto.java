// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.model.Media;
import org.benchlore.page.Block.Picture;

/** A picture that is put on a customer's sheet: one of the library's media, or one that somebody gives as a file. */
public final class SheetPhoto {

    private static final String CAPTION = "What was found";

    private final Picture picture;
    private final Optional<byte[]> given;

    private SheetPhoto(Picture picture, Optional<byte[]> given) {
        this.picture = picture;
        this.given = given;
    }

    /**
     * Takes one of the library's media.
     *
     * @param media a picture that names a file
     * @return the picture with its caption
     */
    public static SheetPhoto of(Media media) {
        return new SheetPhoto(new Picture(media.getFile(), media.getCaption() == null ? CAPTION : media.getCaption()),
                Optional.empty());
    }

    /**
     * Reads a picture from a file and cleans it. It is not taken into the library.
     *
     * @param file a picture
     * @return the picture
     * @throws MediaException if it cannot be read or is no picture, in one sentence that names the file
     */
    public static SheetPhoto given(Path file) throws MediaException {
        try {
            return new SheetPhoto(new Picture("given", CAPTION), Optional.of(MediaShelf.clean(Files.readAllBytes(file))));
        } catch (IOException e) {
            throw new MediaException("'" + file + "' cannot be read: name a picture.", e);
        } catch (MediaException e) {
            throw new MediaException("'" + file + "': " + e.getMessage(), e);
        }
    }

    /**
     * Returns it as it stands on the page.
     *
     * @return file and caption
     */
    public Picture picture() {
        return picture;
    }

    /**
     * Reads it as it may be shown: cleaned.
     *
     * @param root folder of the library
     * @return its bytes
     * @throws MediaException if it is not there or cannot be shown
     */
    public byte[] bytes(Path root) throws MediaException {
        return given.isPresent() ? given.get() : new MediaShelf(root).shown(picture.file());
    }
}
