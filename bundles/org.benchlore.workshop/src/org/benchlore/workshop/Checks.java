// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.benchlore.check.Checker;
import org.benchlore.check.Problem;
import org.benchlore.check.Report;
import org.benchlore.page.Page;
import org.benchlore.page.ProblemList;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Changes;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.IProgressMonitor;

/** The check of an open library: on demand, and from then on after every change that is taken in. */
public final class Checks {

    private final Library library;
    private final Checker checker;
    private final List<Consumer<Report>> listeners = new CopyOnWriteArrayList<>();
    private volatile Executor taker = Runnable::run;

    Checks(Library library, Supplier<LocalDate> today) {
        this.library = library;
        this.checker = new Checker(library, today);
        library.onChange(this::changed);
    }

    /**
     * Returns the checker: its rules, one file, a working copy, what is pending.
     *
     * @return the checker of this library
     */
    public Checker checker() {
        return checker;
    }

    /**
     * Checks every file.
     *
     * @param monitor shows progress by files; may cancel
     * @return what was found
     */
    public Report all(IProgressMonitor monitor) {
        return told(checker.all(monitor));
    }

    /**
     * Looks at files that a change touched and that were left for later. Call it when nobody waits.
     *
     * @param monitor shows progress by files; when it is cancelled, the rest stays pending
     * @return what is found then
     */
    public Report catchUp(IProgressMonitor monitor) {
        return told(checker.catchUp(monitor));
    }

    /**
     * Tells a listener of every report from now on, on the thread that checks.
     *
     * @param listener told what is found
     * @return removes the listener when run
     */
    public Runnable onReport(Consumer<Report> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /**
     * From now on changes are looked at by an executor instead of the thread that makes them, which need not wait then.
     *
     * @param executor runs what it is given one after the other, in order
     */
    public void takeInBy(Executor executor) {
        taker = executor;
    }

    private void changed(Changes changes) {
        taker.execute(() -> told(checker.changed(changes)));
    }

    private Report told(Report report) {
        listeners.forEach(listener -> listener.accept(report));
        return report;
    }

    /**
     * Makes the list of what was found as a page.
     *
     * @param title what was checked
     * @param report what was found
     * @return the page
     */
    public Page page(String title, Report report) {
        var open = report.open().stream().map(problem -> line(problem, "")).toList();
        var silenced = report.silenced().stream().map(one -> line(one.problem(), one.reason())).toList();
        return new ProblemList(title, report.files()).page(open, silenced);
    }

    private ProblemList.Line line(Problem problem, String reason) {
        var name = library.catalogue().entry(problem.at().path()).flatMap(Catalogue.Entry::row).map(Row::title)
                .orElse(problem.at().path());
        return new ProblemList.Line(problem.severity().name().toLowerCase(Locale.ROOT), problem.at(), name, problem.place(),
                problem.sentence(), problem.rule(), reason);
    }
}
