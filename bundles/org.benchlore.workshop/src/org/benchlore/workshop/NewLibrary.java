// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.benchlore.evidence.CountingRules;
import org.benchlore.model.BookFactory;
import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.store.BookFormat;
import org.benchlore.store.LibraryException;

/** Makes a library in an empty folder. */
final class NewLibrary {

    /** Lines of two people's changes cannot be mixed: command-line Git is told to leave merging to a person. */
    private static final String GIT_ATTRIBUTES = "*.xmi text eol=lf -merge\nmedia/** binary\n";
    private static final String GIT_IGNORE = ".benchlore/\n";

    private final Path folder;
    private final BookFormat format = new BookFormat();

    NewLibrary(Path folder) {
        this.folder = folder;
    }

    void create(String title) throws LibraryException {
        try {
            if (Files.exists(folder) && !isEmptyFolder()) {
                throw new LibraryException(folder + " is in use: give a folder that is empty or does not exist yet");
            }
            Files.createDirectories(folder);
            var shop = BookFactory.eINSTANCE.createShop();
            shop.setTitle(title);
            CountingRules.usual().into(shop);
            write(Kind.SHOP, shop);
            var glossary = BookFactory.eINSTANCE.createGlossary();
            glossary.setTitle("Glossary");
            write(Kind.GLOSSARY, glossary);
            Files.writeString(folder.resolve(".gitattributes"), GIT_ATTRIBUTES);
            Files.writeString(folder.resolve(".gitignore"), GIT_IGNORE);
        } catch (IOException e) {
            throw new LibraryException("No library can be made at " + folder + ": check its permissions", e);
        }
    }

    private boolean isEmptyFolder() throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (var files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }

    private void write(Kind kind, TopElement element) throws IOException {
        element.setId(kind.word());
        element.setFormatVersion(BookFormat.VERSION);
        var path = kind.path(element.getId());
        Files.write(folder.resolve(path), format.write(path, element));
    }
}
