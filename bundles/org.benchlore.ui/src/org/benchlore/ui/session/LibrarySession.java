// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

import org.benchlore.store.Changes;
import org.benchlore.workshop.OpenLibrary;
import org.benchlore.workshop.Workshop;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.services.IDisposable;

/**
 * Holds the library that the window works in. Opening, closing and refreshing run as jobs, one after another; the
 * window sees the outcome on its own thread, and so do listeners.
 */
public final class LibrarySession implements IDisposable {

    private static final long REFRESH_PAUSE_NANOS = 1_500_000_000L;

    private final Workshop workshop;
    private final Executor window;
    private final SessionMemory memory;
    private final SessionRule rule = new SessionRule();
    private final SettleJob settle = new SettleJob(() -> current().map(Opened::library), rule);
    private final List<Consumer<SessionEvent>> listeners = new CopyOnWriteArrayList<>();
    private volatile Opened current;
    private Runnable unlisten = () -> { };
    private long lastRefresh;

    /**
     * Makes a session without a library.
     *
     * @param workshop opens libraries
     * @param window runs something on the window's thread
     * @param memory remembers the library for the next start
     */
    public LibrarySession(Workshop workshop, Executor window, SessionMemory memory) {
        this.workshop = workshop;
        this.window = window;
        this.memory = memory;
    }

    /**
     * Returns the services that open libraries.
     *
     * @return the workshop
     */
    public Workshop workshop() {
        return workshop;
    }

    /**
     * Returns the library that is shown.
     *
     * @return the library, or empty if none is open
     */
    public Optional<Opened> current() {
        return Optional.ofNullable(current);
    }

    /**
     * Opens a library in place of the one that is open. If it cannot be opened, the other one stays.
     *
     * @param folder the library's folder
     */
    public void open(Path folder) {
        schedule(new OpenJob(workshop, () -> folder, this));
    }

    /** Opens the user's own copy of the demonstration library. */
    public void openDemonstration() {
        schedule(new OpenJob(workshop, workshop::demonstration, this));
    }

    /**
     * Makes a new library and opens it.
     *
     * @param folder a folder that is missing or empty
     * @param title what people call the shop
     */
    public void create(Path folder, String title) {
        schedule(new OpenJob(workshop, () -> {
            workshop.create(folder, title);
            return folder;
        }, this));
    }

    /** Closes the library, if one is open. */
    public void close() {
        var old = current;
        if (old != null) {
            unlisten.run();
            current = null;
            memory.forgetLibrary();
            tell(new SessionEvent.LibraryClosed());
            schedule(new CloseJob(old.library()));
        }
    }

    /** Looks for changes on the disk. */
    public void refresh() {
        if (current != null) {
            lastRefresh = System.nanoTime();
            schedule(new RefreshJob(current.library(), this));
        }
    }

    /** Looks for changes on the disk, unless that was done a moment ago. */
    public void refreshNowAndThen() {
        if (System.nanoTime() - lastRefresh > REFRESH_PAUSE_NANOS) {
            refresh();
        }
    }

    /**
     * Tells a listener what happens to the library, on the window's thread.
     *
     * @param listener is told
     * @return removes the listener when run
     */
    public Runnable onChange(Consumer<SessionEvent> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** Shows a library in place of the other one; called by jobs. */
    void show(OpenLibrary library) {
        var opened = Opened.of(library);
        var removed = library.library().onChange(changes -> changed(library, changes));
        window.execute(() -> shown(opened, removed));
    }

    private void shown(Opened opened, Runnable removeListener) {
        var old = current;
        unlisten.run();
        unlisten = removeListener;
        current = opened;
        lastRefresh = System.nanoTime();
        memory.rememberLibrary(opened.library().library().root());
        tell(new SessionEvent.LibraryOpened(opened));
        new WarmUpJob(opened.library(), () -> isShown(opened.library())).schedule();
        if (old != null) {
            schedule(new CloseJob(old.library()));
        }
    }

    private boolean isShown(OpenLibrary library) {
        var now = current;
        return now != null && now.library() == library;
    }

    private void changed(OpenLibrary library, Changes changes) {
        var now = Opened.of(library);
        window.execute(() -> {
            if (isShown(library)) {
                current = now;
                settle.startWaiting();
                tell(new SessionEvent.LibraryChanged(now, changes));
            }
        });
    }

    private void tell(SessionEvent event) {
        listeners.forEach(listener -> listener.accept(event));
    }

    private void schedule(Job job) {
        job.setRule(rule);
        job.schedule();
    }

    @Override
    public void dispose() {
        listeners.clear();
        unlisten.run();
        settle.cancel();
        var last = current;
        current = null;
        if (last != null) {
            last.library().close();
        }
    }
}
