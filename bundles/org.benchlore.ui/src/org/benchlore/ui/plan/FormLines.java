// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.model.Access;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.TopElement;
import org.benchlore.model.Unit;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanItem;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/**
 * What stands in the form beside an answer.
 *
 * @param subject title of the unit or machine, empty words if none is picked
 * @param work procedures that were picked
 * @param accesses what can be open already
 * @param doable what can be done already
 */
public record FormLines(String subject, List<Line> work, List<Line> accesses, List<Line> doable) {

    /** Of a form in which nothing is picked. */
    public static final FormLines NONE = new FormLines("", List.of(), List.of(), List.of());

    /**
     * Reads them; may be called on any thread.
     *
     * @param library the library
     * @param wanted what was picked
     * @param plan the plan for it, if there is one
     * @return the lines with their titles
     */
    public static FormLines of(Library library, Wanted wanted, Optional<Plan> plan) {
        var accesses = machine(library, wanted).map(Machine::getAccesses).stream().flatMap(List::stream).map(FormLines::line)
                .toList();
        return new FormLines(top(library, wanted).map(ElementTitle::of).orElse(""), lines(library, wanted.work()), accesses,
                doable(library, wanted, plan));
    }

    static Optional<TopElement> top(Library library, Wanted wanted) {
        return wanted.subject().isEmpty() ? Optional.empty() : library.top(wanted.subject());
    }

    static Optional<Machine> machine(Library library, Wanted wanted) {
        return top(library, wanted).flatMap(top -> top instanceof Unit unit ? library.resolve(unit.getMachine())
                : Optional.of(top)).filter(Machine.class::isInstance).map(Machine.class::cast);
    }

    /** What was picked, what is done, and what comes along with it, each once. */
    private static List<Line> doable(Library library, Wanted wanted, Optional<Plan> plan) {
        var ids = new ArrayList<>(Stream.concat(wanted.work().stream(), wanted.done().stream()).toList());
        plan.ifPresent(made -> made.items().stream().filter(item -> item.proof().isEmpty() && item.owner() instanceof Procedure)
                .map(PlanItem::id).forEach(ids::add));
        return lines(library, ids.stream().distinct().toList());
    }

    private static List<Line> lines(Library library, List<String> procedures) {
        var lines = new LinkedHashMap<String, Line>();
        procedures.forEach(id -> lines.put(id, new Line(id, library.catalogue().byId(id).map(Row::title).orElse(id))));
        return List.copyOf(lines.values());
    }

    private static Line line(Access access) {
        return new Line(access.getId(), access.getTitle() == null ? access.getId() : access.getTitle());
    }
}
