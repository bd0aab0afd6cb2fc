// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Procedure;
import org.benchlore.model.compare.Words;
import org.eclipse.emf.ecore.EReference;

/** No procedure comes before, after or within itself. */
final class ProcedureLoop extends NeighbourRule {

    ProcedureLoop() {
        super(new About("procedure-loop", Severity.ERROR,
                "No procedure comes before, after or within itself",
                "The plan never ends.",
                "A ring is reported once, at its first procedure by path."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        subject.procedure().ifPresent(procedure -> {
            for (var list : List.of(Literals.PROCEDURE__BEFORE, Literals.PROCEDURE__INCLUDES, Literals.PROCEDURE__AFTER_CLOSING)) {
                var ring = ring(subject.path(), procedure, list, neighbours);
                if (!ring.isEmpty() && ring.first().equals(subject.path())) {
                    findings.add(procedure, "By '" + new Words().field(list)
                            + "' the procedure leads back to itself: take one of them away");
                }
            }
        });
    }

    /** The paths of a ring through a procedure, found breadth first; empty if there is none. */
    private static SortedSet<String> ring(String start, Procedure procedure, EReference list, Neighbours neighbours) {
        var from = new HashMap<String, String>();
        var open = new ArrayDeque<Map.Entry<String, Procedure>>(List.of(Map.entry(start, procedure)));
        while (!open.isEmpty()) {
            var at = open.poll();
            for (var next : (List<?>) at.getValue().eGet(list, false)) {
                var path = next == procedure ? start : neighbours.addressOf((Procedure) next).map(Address::path).orElse("");
                if (path.equals(start)) {
                    return back(at.getKey(), from);
                }
                if (from.putIfAbsent(path, at.getKey()) == null) {
                    neighbours.follow((Procedure) next, Procedure.class).ifPresent(one -> open.add(Map.entry(path, one)));
                }
            }
        }
        return new TreeSet<>();
    }

    private static SortedSet<String> back(String last, Map<String, String> from) {
        var ring = new TreeSet<String>();
        for (var at = last; at != null; at = from.get(at)) {
            ring.add(at);
        }
        return ring;
    }
}
