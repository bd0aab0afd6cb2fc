// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.benchlore.pack.take.Taking;
import org.benchlore.search.SearchIndex;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

/** Makes the program's services and opens libraries with them. One for each process is enough. */
public final class Workshop {

    private final Places places;
    private final RecentLibraries recent;
    private final Demonstration demonstration;

    /**
     * Makes the services.
     *
     * @param places the user's folders
     */
    public Workshop(Places places) {
        this.places = places;
        this.recent = new RecentLibraries(places.state().resolve("recent-libraries"));
        this.demonstration = new Demonstration(places.data().resolve("demonstration"));
    }

    /**
     * Returns the user's folders.
     *
     * @return the folders
     */
    public Places places() {
        return places;
    }

    /**
     * Opens a library and remembers it as recent.
     *
     * @param folder the library's folder
     * @param use what it is opened for
     * @param monitor shows progress by files; may cancel
     * @return the open library
     * @throws LibraryException if there is no readable library
     */
    public OpenLibrary open(Path folder, Use use, IProgressMonitor monitor) throws LibraryException {
        var progress = SubMonitor.convert(monitor, 2);
        var library = Library.open(folder, places.cacheOf(folder), progress.split(1));
        if (use == Use.WORK) {
            if (library.holdLock()) {
                recover(library);
            }
            recent.add(library.root());
        }
        try {
            var owner = use == Use.WORK;
            var index = SearchIndex.open(library, places.cacheOf(library.root()).resolve("index"), owner, progress.split(1));
            return new OpenLibrary(library, index, places.draftsOf(library.root()));
        } catch (IOException e) {
            library.close();
            throw new LibraryException("The library at " + folder + " cannot be searched: check the free space", e);
        }
    }

    /** A pack whose taking was broken off is put back before anybody works in the library. */
    private static void recover(Library library) throws LibraryException {
        try {
            if (Taking.recover(library.root())) {
                library.refresh(new NullProgressMonitor());
            }
        } catch (IOException e) {
            throw new LibraryException("What an earlier pack left half done in " + library.root()
                    + " cannot be put back: check the permissions of the folder .benchlore in it", e);
        }
    }

    /**
     * Returns the folder of the user's own copy of the demonstration library, which is made when it is missing.
     *
     * @return a library's folder
     * @throws LibraryException if the copy cannot be written
     */
    public Path demonstration() throws LibraryException {
        return demonstration.folder();
    }

    /**
     * Makes a new library with nothing in it but its shop and an empty glossary.
     *
     * @param folder a folder that is missing or empty
     * @param title what people call the shop
     * @throws LibraryException if the folder is in use or cannot be written
     */
    public void create(Path folder, String title) throws LibraryException {
        new NewLibrary(folder).create(title);
    }

    /**
     * Returns the libraries that were worked in, the latest first.
     *
     * @return folders that exist
     */
    public List<Path> recent() {
        return recent.all();
    }
}
