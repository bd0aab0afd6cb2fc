// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.function.Consumer;

import org.benchlore.search.Query;
import org.benchlore.search.Results;
import org.benchlore.ui.Failures;
import org.benchlore.ui.session.Opened;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Searches away from the window's thread; only the answer to the latest question is handed on. */
final class SearchJob extends Job {

    /**
     * What is asked.
     *
     * @param library where
     * @param query what for
     */
    record Question(Opened library, Query query) {
    }

    /**
     * What came back.
     *
     * @param question what was asked
     * @param results what was found
     */
    record Answer(Question question, Results results) {
    }

    private final Consumer<Answer> done;
    private volatile Question question;

    /** Makes the job; {@code done} is called on the job's thread. */
    SearchJob(Consumer<Answer> done) {
        super(Messages.searching);
        this.done = done;
        setSystem(true);
        setPriority(INTERACTIVE);
    }

    void ask(Question next, long delay) {
        question = next;
        cancel();
        schedule(delay);
    }

    void forget() {
        question = null;
        cancel();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        var now = question;
        if (now != null) {
            find(now, monitor);
        }
        return Status.OK_STATUS;
    }

    private void find(Question now, IProgressMonitor monitor) {
        try {
            var results = now.library().library().search().find(now.query());
            if (now == question && !monitor.isCanceled()) {
                done.accept(new Answer(now, results));
            }
        } catch (RuntimeException e) {
            if (now == question) {
                Failures.log(Messages.searchFailed, e);
            }
        }
    }
}
