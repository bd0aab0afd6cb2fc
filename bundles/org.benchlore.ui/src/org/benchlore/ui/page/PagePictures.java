// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.page.Block;
import org.benchlore.page.Page;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.ImageData;

/** Reads the pictures of a page from a library's media. */
public final class PagePictures {

    private PagePictures() {
    }

    /**
     * Reads them; may be called on any thread.
     *
     * @param page a page
     * @param root folder of the library
     * @return pictures by file; one that cannot be read is left out
     */
    public static Map<String, ImageData> of(Page page, Path root) {
        var pictures = new HashMap<String, ImageData>();
        var shelf = new MediaShelf(root);
        for (var block : page.blocks()) {
            if (block instanceof Block.Picture picture) {
                picture(shelf, picture.file()).ifPresent(data -> pictures.put(picture.file(), data));
            }
        }
        return pictures;
    }

    /** Cleaned before it is shown, since a library may come from anywhere; one that cannot be shown leaves a frame. */
    private static Optional<ImageData> picture(MediaShelf shelf, String file) {
        try {
            return Optional.of(new ImageData(new ByteArrayInputStream(shelf.shown(file))));
        } catch (MediaException | SWTException | IllegalArgumentException e) {
            System.getLogger(PagePictures.class.getName()).log(System.Logger.Level.WARNING,
                    "No picture can be read: " + file, e);
            return Optional.empty();
        }
    }
}
