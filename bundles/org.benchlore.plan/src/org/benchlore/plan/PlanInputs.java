// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.benchlore.model.Access;
import org.benchlore.model.Need;
import org.benchlore.model.Procedure;
import org.benchlore.model.Status;
import org.benchlore.model.Way;
import org.benchlore.model.Work;
import org.benchlore.plan.search.AccessNode;
import org.benchlore.plan.search.ClosingWork;
import org.benchlore.plan.search.Option;
import org.benchlore.plan.search.PlanException;
import org.benchlore.plan.search.PlanProblem;
import org.benchlore.plan.search.PlanSearch;
import org.benchlore.plan.search.Target;

/** Turns machine and procedures into what the search takes, and remembers what stands behind each id. */
final class PlanInputs {

    /** Stands for a procedure that has no way written down, only the time of the whole job. */
    private static final String WHOLE_JOB = "whole-job";

    private final PlanBook book;
    private final PlanRequest request;
    private final WorkFacts facts;
    private final Set<String> done;
    private final Set<String> gates = new TreeSet<>();
    private final Map<String, Map<String, Optional<Way>>> ways = new LinkedHashMap<>();
    private final Map<String, ClosingWork> closings = new TreeMap<>();
    private final Set<String> remarks = new LinkedHashSet<>();

    PlanInputs(PlanBook book, PlanRequest request, WorkFacts facts) throws PlanException {
        this.book = book;
        this.request = request;
        this.facts = facts;
        this.done = book.withIncluded(request.done());
    }

    PlanProblem problem() throws PlanException {
        var targets = new ArrayList<Target>();
        for (var id : targetIds()) {
            targets.add(target(id));
        }
        var nodes = new ArrayList<AccessNode>();
        for (var access : book.accesses().values()) {
            nodes.add(node(access));
        }
        var due = new TreeSet<String>();
        for (var id : request.done()) {
            due.addAll(closing(book.procedure(id)));
        }
        return alsoClosing(new PlanProblem(nodes, targets, List.of(), new OpenNow(book, request.open(), remarks).ids(), List.copyOf(due)));
    }

    /** What is asked for and is done after closing anyway is done there, once. */
    private PlanProblem alsoClosing(PlanProblem problem) {
        var once = problem.targets().stream().filter(target -> closings.containsKey(target.id()) && target.options().stream()
                .allMatch(option -> option.needs().isEmpty())).map(Target::id).toList();
        var due = new TreeSet<>(problem.due());
        due.addAll(once);
        return new PlanProblem(problem.accesses(), problem.targets().stream().filter(it -> !once.contains(it.id())).toList(),
                List.copyOf(closings.values()), problem.open(), List.copyOf(due));
    }

    private Set<String> targetIds() throws PlanException {
        var wanted = new TreeSet<String>();
        for (var id : request.procedures()) {
            check(book.procedure(id));
            if (done.contains(id)) {
                remarks.add("'" + title(id) + "' has been done.");
            } else {
                wanted.add(id);
            }
        }
        dropIncluded(wanted);
        for (var id : List.copyOf(wanted)) {
            for (var early : book.before(id)) {
                if (!done.contains(early) && wanted.add(early)) {
                    gates.add(early);
                }
            }
        }
        return wanted;
    }

    private void dropIncluded(Set<String> wanted) throws PlanException {
        for (var id : List.copyOf(wanted)) {
            for (var part : book.withIncluded(List.of(id))) {
                if (!part.equals(id) && wanted.contains(id) && wanted.remove(part)) {
                    remarks.add("'" + title(part) + "' is done by '" + title(id) + "' and counted once.");
                }
            }
        }
    }

    private void check(Procedure procedure) throws PlanException {
        var id = procedure.getId();
        if (procedure.getStatus() == Status.WITHDRAWN) {
            var instead = book.ids(procedure.getReplacedBy() == null ? List.of() : List.of(procedure.getReplacedBy()));
            throw new PlanException("'" + id + "' is withdrawn: "
                    + (instead.isEmpty() ? "choose another procedure" : "plan '" + instead.get(0) + "' instead"), List.of(id));
        }
        var machines = procedure.getApplicability().stream().map(it -> it.getMachine()).filter(it -> it != null).toList();
        if (!machines.isEmpty() && !book.ids(machines).contains(book.machine().getId())) {
            throw new PlanException("'" + id + "' is not for '" + book.machine().getId() + "' but for "
                    + String.join(", ", book.ids(machines)) + "; choose another procedure",
                    Stream.concat(Stream.of(id, book.machine().getId()), book.ids(machines).stream()).toList());
        }
        if (procedure.getStatus() == Status.DRAFT) {
            remarks.add("'" + title(id) + "' is a draft that nobody has reviewed.");
        }
    }

    private String title(String id) throws PlanException {
        return Titles.of(book.procedure(id));
    }

    private Target target(String id) throws PlanException {
        var procedure = book.procedure(id);
        var options = new ArrayList<Option>();
        ways.put(id, new TreeMap<>());
        for (var way : procedure.getWays()) {
            option(procedure, way).ifPresent(options::add);
        }
        if (options.isEmpty() && procedure.getWholeJobUsual() != null && procedure.getWays().isEmpty()) {
            ways.get(id).put(WHOLE_JOB, Optional.empty());
            options.add(new Option(WHOLE_JOB, facts.cents(null, procedure), List.of()));
        }
        if (options.isEmpty()) {
            throw new PlanException("'" + id + "' has no way that can be done on '" + book.machine().getId()
                    + "'; write one down, or its time for the whole job", List.of(id));
        }
        return new Target(id, options, book.ids(procedure.getBefore()), closing(procedure));
    }

    /** A way of this machine; one whose need names accesses of other machines only is for those. */
    private Optional<Option> option(Procedure procedure, Way way) {
        var needs = needs(way.getNeeds());
        if (needs.isEmpty() && !way.getNeeds().isEmpty() || way.getNeeds().stream().anyMatch(need ->
                !need.getAnyOf().isEmpty() && book.ofThisMachine(need.getAnyOf()).isEmpty())) {
            return Optional.empty();
        }
        ways.get(procedure.getId()).put(way.getId(), Optional.of(way));
        return Optional.of(new Option(way.getId(), facts.cents(way.getWork(), procedure), needs));
    }

    private List<List<String>> needs(List<Need> needs) {
        return needs.stream().map(need -> book.ofThisMachine(need.getAnyOf())).toList();
    }

    private AccessNode node(Access access) throws PlanException {
        return new AccessNode(access.getId(), facts.cents(access.getStrip(), null), facts.cents(access.getRefit(), null),
                access.getNeeds().stream().map(need -> book.ofThisMachine(need.getAnyOf())).toList(),
                book.ofThisMachine(access.getCovers()), book.ofThisMachine(access.getNotWith()),
                closing(book.ids(access.getAfterClosing())));
    }

    private List<String> closing(Procedure procedure) throws PlanException {
        return closing(book.ids(procedure.getAfterClosing()));
    }

    private List<String> closing(List<String> ids) throws PlanException {
        var due = ids.stream().filter(id -> !done.contains(id)).toList();
        for (var id : due) {
            if (!closings.containsKey(id)) {
                var procedure = book.procedure(id);
                closings.put(id, new ClosingWork(id, cheapest(procedure), List.of()));
                var more = new TreeSet<>(closing(book.ids(procedure.getBefore()).stream().filter(early ->
                        !gates.contains(early)).toList()));
                more.addAll(closing(procedure));
                closings.put(id, new ClosingWork(id, cheapest(procedure), List.copyOf(more)));
            }
        }
        return due;
    }

    private long cheapest(Procedure procedure) {
        return closingWork(procedure).map(work -> facts.cents(work, procedure)).orElseGet(() -> facts.cents(null, procedure));
    }

    /** Work of the cheapest way of something done after closing; a way that needs nothing open comes first. */
    Optional<Work> closingWork(Procedure procedure) {
        return procedure.getWays().stream().filter(way -> way.getWork() != null)
                .min(Comparator.comparing((Way way) -> !way.getNeeds().isEmpty())
                        .thenComparing(way -> facts.cents(way.getWork(), procedure)).thenComparing(Way::getId))
                .map(Way::getWork);
    }

    List<List<String>> needs(PlanItem item) {
        return book.known(item.id()).getWays().stream().filter(way -> item.work().filter(way.getWork()::equals).isPresent())
                .map(way -> needs(way.getNeeds())).findFirst().orElse(List.of());
    }

    /** Whether something done after closing needs nothing open. */
    boolean isDoneClosed(PlanItem item) {
        return needs(item).isEmpty();
    }

    /** What must be opened, in order, for something done after closing that cannot be done closed. */
    List<String> reopening(PlanItem item, PlanProblem problem) throws PlanException {
        var needs = needs(item);
        if (needs.isEmpty()) {
            return List.of();
        }
        remarks.add("'" + item.title() + "' cannot be done with everything closed: what it needs is opened for it once more;"
                + " that was not weighed against other ways.");
        var target = new Target(item.id(), List.of(new Option("way", 0, needs)), List.of(), List.of());
        return new PlanSearch(PlanSearch.USUAL_BRANCHES).solve(new PlanProblem(problem.accesses(), List.of(target),
                problem.closings(), List.of(), List.of())).openings();
    }

    /** Those that are done only because something must come after them. */
    Set<String> gates() {
        return gates;
    }

    Optional<Way> way(String target, String option) {
        return ways.get(target).get(option);
    }

    Set<String> remarks() {
        return remarks;
    }

    PlanRequest request() {
        return request;
    }

    PlanBook book() {
        return book;
    }
}
