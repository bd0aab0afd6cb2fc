// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.check.Report;
import org.benchlore.check.Rule;
import org.benchlore.check.Silenced;
import org.benchlore.store.FileProblem;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.ui.services.IDisposable;

/**
 * What the rules find in the library that the window shows. It is checked as soon as it is open and after each change,
 * never on the window's thread. Used on the window's thread.
 */
public final class Checking implements IDisposable {

    /** The search is made ready first: somebody may be waiting for that. */
    private static final long PAUSE_MILLIS = 400;

    /**
     * What was found last.
     *
     * @param report the problems
     * @param rules every rule by its id
     */
    public record Found(Report report, Map<String, Rule> rules) {

        private static final String BROKEN_REFERENCE = "broken-reference";

        /**
         * Leaves out what the rules say as well: files that are damaged, references that lead nowhere.
         *
         * @param files what was found in reading the files
         * @return the rest
         */
        public List<FileProblem> unsaid(List<FileProblem> files) {
            var said = Stream.concat(report.open().stream(), report.silenced().stream().map(Silenced::problem))
                    .filter(problem -> problem.rule().equals(BROKEN_REFERENCE)).map(problem -> problem.at().path())
                    .collect(Collectors.toSet());
            return files.stream().filter(problem -> problem.severity() == FileProblem.Severity.MISFIT
                    && !said.contains(problem.path())).toList();
        }
    }

    private final LibrarySession session;
    private final Executor window;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final Runnable unlisten;
    private volatile Optional<OpenLibrary> library = Optional.empty();
    private Optional<Found> found = Optional.empty();
    private Runnable stop = () -> { };

    /**
     * Begins to check.
     *
     * @param session holds the library
     * @param window runs something soon on the window's thread
     */
    public Checking(LibrarySession session, Executor window) {
        this.session = session;
        this.window = window;
        this.unlisten = session.onChange(event -> follow());
        follow();
    }

    /** What was found last; empty if no library is open or it was not checked yet. */
    public Optional<Found> found() {
        return found;
    }

    /**
     * Tells a listener when something else is found, on the window's thread.
     *
     * @param listener is told
     * @return removes the listener when run
     */
    public Runnable onChange(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private void follow() {
        var now = session.current().map(Opened::library);
        if (!now.equals(library)) {
            leave();
            library = now;
            now.ifPresent(this::enter);
            listeners.forEach(Runnable::run);
        }
    }

    private void leave() {
        stop.run();
        stop = () -> { };
        library = Optional.empty();
        found = Optional.empty();
    }

    private void enter(OpenLibrary opened) {
        var checks = opened.checks();
        var job = new CheckJob(checks, () -> library.equals(Optional.of(opened)));
        var deaf = checks.onReport(report -> {
            var rules = checks.checker().rules().all().stream().collect(Collectors.toMap(Rule::id, rule -> rule));
            window.execute(() -> show(opened, new Found(report, rules)));
        });
        checks.takeInBy(job);
        stop = () -> {
            deaf.run();
            job.cancel();
        };
        job.schedule(PAUSE_MILLIS);
    }

    private void show(OpenLibrary of, Found now) {
        if (library.equals(Optional.of(of))) {
            found = Optional.of(now);
            listeners.forEach(Runnable::run);
        }
    }

    @Override
    public void dispose() {
        unlisten.run();
        leave();
        listeners.clear();
    }
}
