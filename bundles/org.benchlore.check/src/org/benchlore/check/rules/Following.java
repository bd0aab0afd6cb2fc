// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.benchlore.check.Neighbours;
import org.benchlore.model.Access;
import org.benchlore.model.Procedure;
import org.benchlore.model.Work;

/** What is done after a work: after closing, of the procedure, of what it includes and of every access it may need. */
final class Following {

    private final Neighbours neighbours;

    Following(Neighbours neighbours) {
        this.neighbours = neighbours;
    }

    /** Procedures done after closing, and those that they and the procedure include. */
    Set<Procedure> of(Procedure procedure) {
        var found = new LinkedHashSet<Procedure>();
        var open = new ArrayDeque<Procedure>(List.of(procedure));
        while (!open.isEmpty()) {
            var at = open.poll();
            var next = new LinkedHashSet<Procedure>(at.getAfterClosing());
            next.addAll(at.getIncludes());
            at.getWays().forEach(way -> way.getNeeds().forEach(need -> need.getAnyOf().forEach(access ->
                    neighbours.follow(access, Access.class).ifPresent(one -> next.addAll(afterAccess(one))))));
            next.forEach(one -> neighbours.follow(one, Procedure.class).filter(found::add).ifPresent(open::add));
        }
        return found;
    }

    /** Procedures done after an access is closed, and after those that it needs. */
    Set<Procedure> afterAccess(Access access) {
        var seen = new HashSet<Access>();
        var found = new LinkedHashSet<Procedure>();
        var open = new ArrayDeque<Access>(List.of(access));
        while (!open.isEmpty()) {
            var at = open.poll();
            if (seen.add(at)) {
                found.addAll(at.getAfterClosing());
                at.getNeeds().forEach(need -> open.addAll(need.getAnyOf().stream().filter(one -> !one.eIsProxy()).toList()));
            }
        }
        return found;
    }

    static List<Work> works(Procedure procedure) {
        return procedure.getWays().stream().map(way -> way.getWork()).filter(work -> work != null).toList();
    }
}
