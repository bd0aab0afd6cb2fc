// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.page.Block;
import org.benchlore.page.HtmlRenderer;
import org.benchlore.page.Page;

/** Writes a job card as a file of its own, its pictures beside it, cleaned as they are for the window. */
final class CardFile {

    private final Path library;
    private final Page card;

    CardFile(Path library, Page card) {
        this.library = library;
        this.card = card;
    }

    /** Writes it into a new folder that nobody else can have made before; returns the file. */
    Path write(String name) throws IOException {
        var folder = Files.createTempDirectory("benchlore-card-");
        var pictures = pictures(folder);
        var file = folder.resolve(name.replaceAll("[^A-Za-z0-9-]+", "-") + ".html");
        Files.writeString(file, new HtmlRenderer(target -> Optional.empty(),
                picture -> Optional.ofNullable(pictures.get(picture))).render(card));
        return file;
    }

    private Map<String, String> pictures(Path folder) throws IOException {
        var names = new HashMap<String, String>();
        var shelf = new MediaShelf(library);
        for (var block : card.blocks()) {
            if (block instanceof Block.Picture picture && !names.containsKey(picture.file())) {
                var name = "picture-" + (names.size() + 1) + picture.file().substring(picture.file().lastIndexOf('.'));
                try {
                    Files.write(folder.resolve(name), shelf.shown(picture.file()));
                    names.put(picture.file(), name);
                } catch (MediaException e) {
                    System.getLogger(CardFile.class.getName()).log(System.Logger.Level.WARNING,
                            "No picture can be read: " + picture.file(), e);
                }
            }
        }
        return names;
    }
}
