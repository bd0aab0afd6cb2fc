// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.benchlore.model.BookFactory;
import org.benchlore.model.Kind;
import org.benchlore.model.Titled;
import org.benchlore.model.TopElement;
import org.benchlore.page.Block.Banner;
import org.benchlore.store.BookFormat;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;

/** A small library on the disk, built from elements. */
final class TestBook {

    static final BookFactory MAKE = BookFactory.eINSTANCE;

    private final Path folder;
    private Library library;

    TestBook(Path folder) {
        this.folder = folder;
        add(named(MAKE.createShop(), "shop", "Shop for tests"));
    }

    static <T extends TopElement> T named(T element, String id, String title) {
        element.setId(id);
        element.setTitle(title);
        element.setFormatVersion(BookFormat.VERSION);
        return element;
    }

    static <T extends Titled> T inner(T element, String id, String title) {
        element.setId(id);
        element.setTitle(title);
        return element;
    }

    /** Makes a reference to a top-level element of another file, which need not exist. */
    static <T extends EObject> T to(T blank, String id) {
        return to(blank, Kind.of(blank.eClass()).orElseThrow().path(id), id);
    }

    static <T extends EObject> T to(T blank, String path, String id) {
        ((InternalEObject) blank).eSetProxyURI(URI.createURI("library:/" + path + "#" + id));
        return blank;
    }

    TestBook add(TopElement element) {
        var path = Kind.of(element.eClass()).orElseThrow().path(element.getId());
        return write(path, new String(new BookFormat().write(path, element), StandardCharsets.UTF_8));
    }

    TestBook write(String path, String text) {
        try {
            var file = folder.resolve("library").resolve(path);
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return this;
    }

    Library library() {
        try {
            if (library == null) {
                library = Library.open(folder.resolve("library"), folder.resolve("cache"), new NullProgressMonitor());
            }
            return library;
        } catch (LibraryException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Returns the page of an element that lies in the library. */
    Page page(String id) {
        return new Pages(library()).of(library().top(id).orElseThrow());
    }

    String text(String id) {
        return new TextRenderer(80).render(page(id));
    }

    static List<String> banners(Page page) {
        return page.blocks().stream().filter(Banner.class::isInstance).map(Banner.class::cast)
                .map(banner -> banner.tone() + " " + banner.text()).toList();
    }
}
