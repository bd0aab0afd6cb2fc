// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.log;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.ui.services.IDisposable;

/** Keeps the latest records; older ones make room. Safe to use from any thread. */
public final class LogBuffer implements IDisposable {

    private final int most;
    private final Deque<LogRecord> records = new ArrayDeque<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final LogFeed feed = new LogFeed(this);

    /**
     * Makes an empty buffer.
     *
     * @param most how many records are kept, at least 1
     */
    public LogBuffer(int most) {
        this.most = most;
    }

    /** Begins to listen to the platform's log and to the system loggers. */
    public void listen() {
        feed.install();
    }

    /**
     * Adds a record.
     *
     * @param record the newest
     */
    public void add(LogRecord record) {
        synchronized (records) {
            if (records.size() == most) {
                records.removeFirst();
            }
            records.addLast(record);
        }
        listeners.forEach(Runnable::run);
    }

    /** Forgets every record. */
    public void clear() {
        synchronized (records) {
            records.clear();
        }
        listeners.forEach(Runnable::run);
    }

    /**
     * Returns what is kept.
     *
     * @return a copy, oldest first
     */
    public List<LogRecord> records() {
        synchronized (records) {
            return List.copyOf(records);
        }
    }

    /**
     * Tells a listener of every change, on the thread that made it.
     *
     * @param listener is told
     * @return removes the listener when run
     */
    public Runnable onChange(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    @Override
    public void dispose() {
        feed.remove();
        listeners.clear();
    }
}
