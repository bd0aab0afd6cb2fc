// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.IntConsumer;

import org.benchlore.ui.Failures;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.osgi.service.prefs.BackingStoreException;

/** What the window remembers from one start to the next. */
public final class SessionMemory {

    private static final String LIBRARY = "library";
    private static final String APPEARANCE = "appearance";
    private static final String ZOOM = "zoom";
    private static final int USUAL_ZOOM = 100;

    private final IEclipsePreferences store;

    /**
     * Makes a memory.
     *
     * @param store where it is kept
     */
    public SessionMemory(IEclipsePreferences store) {
        this.store = store;
    }

    /**
     * Returns the library that was open when the program ended.
     *
     * @return a folder that exists, or empty
     */
    public Optional<Path> library() {
        try {
            return Optional.ofNullable(store.get(LIBRARY, null)).map(Path::of).filter(Files::isDirectory);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    void rememberLibrary(Path folder) {
        put(LIBRARY, folder.toString());
    }

    void forgetLibrary() {
        store.remove(LIBRARY);
        flush();
    }

    /**
     * Returns the chosen appearance.
     *
     * @return a word, empty if none was chosen
     */
    public String appearance() {
        return store.get(APPEARANCE, "");
    }

    /**
     * Remembers the chosen appearance.
     *
     * @param word a word
     */
    public void rememberAppearance(String word) {
        put(APPEARANCE, word);
    }

    /**
     * Returns the size of pages.
     *
     * @return per cent
     */
    public int zoom() {
        return store.getInt(ZOOM, USUAL_ZOOM);
    }

    /**
     * Remembers the size of pages and tells those who asked.
     *
     * @param percent per cent
     */
    public void rememberZoom(int percent) {
        put(ZOOM, Integer.toString(percent));
    }

    /**
     * Tells a listener of a new size of pages, on the thread that sets it.
     *
     * @param listener told the size in per cent
     * @return removes the listener when run
     */
    public Runnable onZoom(IntConsumer listener) {
        IEclipsePreferences.IPreferenceChangeListener change = event -> {
            if (ZOOM.equals(event.getKey())) {
                listener.accept(zoom());
            }
        };
        store.addPreferenceChangeListener(change);
        return () -> store.removePreferenceChangeListener(change);
    }

    private void put(String key, String value) {
        store.put(key, value);
        flush();
    }

    private void flush() {
        try {
            store.flush();
        } catch (BackingStoreException e) {
            Failures.log("What the window remembers cannot be kept: check the free space", e);
        }
    }
}
