// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.draft;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.EditSession.Event;
import org.benchlore.edit.Sessions;

/**
 * Writes a draft of every session with something to save, at most so often, and removes it when the session is saved or
 * closed. It has no timer of its own: somebody calls {@link #tick}, or passes a timer to {@link #start}.
 */
public final class Autosave implements AutoCloseable {

    private final Drafts drafts;
    private final Sessions sessions;
    private final Clock clock;
    private final Duration interval;
    private final Runnable stopListening;
    private final Map<String, Long> drafted = new HashMap<>();
    private final Map<String, Instant> times = new HashMap<>();
    private final Map<String, DraftFile> pending = new ConcurrentHashMap<>();
    private final Object writing = new Object();
    private volatile Optional<String> problem = Optional.empty();
    private volatile boolean isClosed;

    /**
     * Starts to follow the sessions of a library.
     *
     * @param drafts where the drafts go
     * @param sessions the sessions
     * @param clock says when a draft was written
     * @param interval a draft of one session is written at most so often
     */
    public Autosave(Drafts drafts, Sessions sessions, Clock clock, Duration interval) {
        this.drafts = drafts;
        this.sessions = sessions;
        this.clock = clock;
        this.interval = interval;
        this.stopListening = sessions.onOpen(this::follow);
        sessions.all().forEach(this::follow);
    }

    private void follow(EditSession session) {
        session.onEvent(event -> {
            if (!isClosed && (event == Event.SAVED || event == Event.CLOSED)) {
                forget(session.path());
            }
        });
    }

    /**
     * Writes the drafts that are due. Called on the thread that edits.
     *
     * @return how many were written
     */
    public int tick() {
        var due = collect();
        due.forEach(this::write);
        return due.size();
    }

    /**
     * Lets a timer write the drafts: working copies are looked at on the thread that edits, files are written on the
     * timer's own.
     *
     * @param timer the timer, which the caller ends
     * @param editing runs something on the thread that edits
     */
    public void start(ScheduledExecutorService timer, Executor editing) {
        timer.scheduleWithFixedDelay(() -> editing.execute(() -> {
            var due = collect();
            try {
                due.forEach(path -> timer.execute(() -> write(path)));
            } catch (RejectedExecutionException e) {
                log(Level.DEBUG, "The timer has ended; the last drafts are written here", e);
                due.forEach(this::write);
            }
        }), interval.toMillis(), interval.toMillis(), TimeUnit.MILLISECONDS);
    }

    private List<String> collect() {
        var due = new ArrayList<String>();
        for (var session : isClosed ? List.<EditSession>of() : sessions.all()) {
            var path = session.path();
            if (session.isDirty() && session.version() != drafted.getOrDefault(path, -1L) && isTime(path)) {
                pending.put(path, drafts.of(session, clock.instant()));
                drafted.put(path, session.version());
                times.put(path, clock.instant());
                due.add(path);
            } else if (!session.isDirty() && drafted.containsKey(path)) {
                forget(path);
            }
        }
        return due;
    }

    private boolean isTime(String path) {
        var last = times.get(path);
        return last == null || !clock.instant().isBefore(last.plus(interval));
    }

    private void write(String path) {
        synchronized (writing) {
            var draft = pending.remove(path);
            try {
                if (draft != null) {
                    drafts.write(draft);
                    problem = Optional.empty();
                }
            } catch (IOException e) {
                problem = Optional.of("What you write cannot be kept against a crash: save often, and check the free space"
                        + " of the user folder");
                log(Level.WARNING, "The draft of " + path + " cannot be written", e);
            }
        }
    }

    private void forget(String path) {
        drafted.remove(path);
        times.remove(path);
        synchronized (writing) {
            pending.remove(path);
            try {
                drafts.remove(path);
            } catch (IOException e) {
                log(Level.WARNING, "The draft of " + path + " cannot be removed and will be offered again", e);
            }
        }
    }

    /**
     * Says why drafts cannot be written.
     *
     * @return a plain sentence, or empty while they can
     */
    public Optional<String> problem() {
        return problem;
    }

    /** Stops; drafts of sessions that are still open stay and can be restored. */
    @Override
    public void close() {
        isClosed = true;
        stopListening.run();
    }

    private static void log(Level level, String message, Exception cause) {
        System.getLogger(Autosave.class.getName()).log(level, message, cause);
    }
}
