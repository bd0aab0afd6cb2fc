// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import org.benchlore.model.Address;
import org.benchlore.store.KindFacts.JobFacts;
import org.benchlore.store.KindFacts.Left;
import org.benchlore.store.Row;

/** Tells which component a job found to be at fault, by what is written, from the plainest word to the least. */
final class Blame {

    private static final String PART_LEFT_IN = "PART_LEFT_IN";
    private static final Set<String> OURS = Set.of("OUR_WORK", "NEW_PART_BAD");

    private final Function<Address, Optional<Address>> componentOfCause;

    Blame(Function<Address, Optional<Address>> componentOfCause) {
        this.componentOfCause = componentOfCause;
    }

    /** Tells whether a job says of itself that a component had failed; the list outweighs the cause. */
    boolean names(Row job, Address component) {
        var failed = facts(job).failed();
        return failed.isEmpty() ? cause(job).filter(component::equals).isPresent() : failed.contains(component);
    }

    /** Tells whether a job says anything of what had failed. */
    boolean isSilent(Row job) {
        return facts(job).failed().isEmpty() && cause(job).isEmpty();
    }

    private Optional<Address> cause(Row job) {
        return job.cause().flatMap(componentOfCause);
    }

    /** Tells whether a later job shows that what an earlier one left in failed. */
    boolean leftInFailed(Row earlier, Row later, Address component) {
        if (names(later, component)) {
            return true;
        }
        if (!isSilent(later) || !comesBack(earlier, later) || !facts(later).comebackReason().equals(PART_LEFT_IN)) {
            return false;
        }
        var left = facts(earlier).leftIn().stream().filter(Left::confirmed).map(Left::component).distinct().toList();
        var renewed = facts(later).renewed();
        return left.size() == 1 ? left.contains(component) : renewed.contains(component)
                && left.stream().filter(renewed::contains).count() == 1;
    }

    /** Tells whether a later job shows that what an earlier one renewed was the trouble. */
    boolean renewedFailed(Row earlier, Row later, Address component) {
        var reason = facts(later).comebackReason();
        if (names(later, component)) {
            return !comesBack(earlier, later) || !reason.equals(PART_LEFT_IN);
        }
        return isSilent(later) && comesBack(earlier, later) && OURS.contains(reason)
                && facts(earlier).renewed().equals(List.of(component));
    }

    private static boolean comesBack(Row earlier, Row later) {
        return facts(later).comebackOf().filter(earlier.address()::equals).isPresent();
    }

    static JobFacts facts(Row job) {
        return job.job().orElseThrow();
    }
}
