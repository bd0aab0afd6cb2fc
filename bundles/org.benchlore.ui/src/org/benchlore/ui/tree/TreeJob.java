// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tree;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.ui.session.Opened;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Builds the tree and filters it away from the window's thread; only the latest wish is met. */
final class TreeJob extends Job {

    /**
     * What is to be shown.
     *
     * @param library the library
     * @param typed what is in the filter
     */
    record Wish(Optional<Opened> library, String typed) {
    }

    /**
     * What is shown.
     *
     * @param nodes the top nodes
     * @param elements how many elements are below them, each counted once
     */
    record Shown(List<TreeNode> nodes, int elements) {

        static Shown of(List<TreeNode> nodes) {
            var found = new HashSet<Address>();
            nodes.forEach(node -> node.collect(found));
            return new Shown(nodes, found.size());
        }
    }

    private final Consumer<Shown> done;
    private volatile Wish wish;
    private Opened built;
    private List<TreeNode> all = List.of();

    /** Makes the job; {@code done} is called on the job's thread. */
    TreeJob(Consumer<Shown> done) {
        super(Messages.buildingTree);
        this.done = done;
        setSystem(true);
        setPriority(INTERACTIVE);
    }

    void show(Wish next, long delay) {
        wish = next;
        cancel();
        schedule(delay);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        var now = wish;
        if (now.library().orElse(null) != built) {
            built = now.library().orElse(null);
            all = built == null ? List.of() : new LibraryTree(built.library().library()).build();
        }
        var shown = Shown.of(now.typed().isBlank() ? all : new TreeFilter(now.typed()).keep(all));
        if (!monitor.isCanceled() && now == wish) {
            done.accept(shown);
        }
        return Status.OK_STATUS;
    }
}
