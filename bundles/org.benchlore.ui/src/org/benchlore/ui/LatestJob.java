// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui;

import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Function;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/**
 * Answers questions away from the window's thread. Only the answer to the latest question is handed on: an older one is
 * dropped even if it is on its way to the window already.
 *
 * @param <Q> what is asked; each question is an object of its own
 * @param <A> what comes back
 */
public final class LatestJob<Q, A> extends Job {

    private final BiFunction<Q, IProgressMonitor, A> work;
    private final WindowThread window;
    private final BiConsumer<Q, A> done;
    private volatile Q latest;

    /**
     * Makes a job that waits for a question.
     *
     * @param name what it does, in words
     * @param work answers a question on the job's thread
     * @param window where the answer is handed on
     * @param done is told question and answer on the window's thread
     */
    public LatestJob(String name, Function<Q, A> work, WindowThread window, BiConsumer<Q, A> done) {
        this(name, (question, monitor) -> work.apply(question), window, done);
    }

    /**
     * Makes a job that waits for a question and stops early where the question is dropped.
     *
     * @param name what it does, in words
     * @param work answers a question on the job's thread, or throws OperationCanceledException
     * @param window where the answer is handed on
     * @param done is told question and answer on the window's thread
     */
    public LatestJob(String name, BiFunction<Q, IProgressMonitor, A> work, WindowThread window, BiConsumer<Q, A> done) {
        super(name);
        this.work = work;
        this.window = window;
        this.done = done;
        setSystem(true);
        setPriority(INTERACTIVE);
    }

    /**
     * Asks in place of whatever was asked before.
     *
     * @param question what is asked
     * @param delay milliseconds to wait for a newer question first
     */
    public void ask(Q question, long delay) {
        latest = question;
        cancel();
        schedule(delay);
    }

    /** Drops the question; no answer will come. */
    public void forget() {
        latest = null;
        cancel();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        var question = latest;
        if (question == null) {
            return Status.OK_STATUS;
        }
        try {
            var answer = work.apply(question, monitor);
            window.run(() -> handOn(question, answer));
        } catch (OperationCanceledException e) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException e) {
            if (question == latest) {
                Failures.log(getName(), e);
            }
        }
        return Status.OK_STATUS;
    }

    private void handOn(Q question, A answer) {
        if (question == latest) {
            done.accept(question, answer);
        }
    }
}
