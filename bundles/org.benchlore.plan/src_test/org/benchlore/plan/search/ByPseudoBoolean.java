// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;

import org.sat4j.core.Vec;
import org.sat4j.core.VecInt;
import org.sat4j.pb.ObjectiveFunction;
import org.sat4j.pb.OptToPBSATAdapter;
import org.sat4j.pb.PseudoOptDecorator;
import org.sat4j.pb.SolverFactory;
import org.sat4j.specs.ContradictionException;
import org.sat4j.specs.TimeoutException;

/**
 * The same problem given to Sat4j's pseudo-Boolean optimiser (org.ow2.sat4j.pb, test scope only), one number of sittings
 * after the other. What holds itself up in a circle is found afterwards and cut away, until nothing is left to cut.
 */
final class ByPseudoBoolean {

    private final PlanProblem problem;
    private final Map<String, AccessNode> accesses = new HashMap<>();
    private final Map<String, Integer> names = new HashMap<>();
    private final Map<Integer, Long> costs = new HashMap<>();
    private final List<int[]> clauses = new ArrayList<>();

    ByPseudoBoolean(PlanProblem problem) {
        this.problem = problem;
        problem.accesses().forEach(it -> accesses.put(it.id(), it));
    }

    OptionalLong cost() throws TimeoutException {
        var best = OptionalLong.empty();
        for (int sittings = 0; sittings <= problem.targets().size(); sittings++) {
            var found = cost(sittings);
            if (found.isPresent() && (best.isEmpty() || found.getAsLong() < best.getAsLong())) {
                best = found;
            }
        }
        long fixed = problem.open().stream().mapToLong(id -> accesses.get(id).refit()).sum();
        return best.isPresent() ? OptionalLong.of(best.getAsLong() + fixed) : best;
    }

    private int of(String name) {
        return names.computeIfAbsent(name, it -> names.size() + 1);
    }

    private int of(String name, long cost) {
        costs.put(of(name), cost);
        return of(name);
    }

    private void rule(int... literals) {
        clauses.add(literals);
    }

    private OptionalLong cost(int sittings) throws TimeoutException {
        names.clear();
        costs.clear();
        clauses.clear();
        problem.closings().forEach(it -> closing(it.id(), it.cost(), it.closing()));
        problem.due().forEach(id -> rule(of("closing " + id)));
        problem.open().forEach(id -> accesses.get(id).closing().forEach(f -> rule(of("closing " + f))));
        for (int i = 1; i <= sittings; i++) {
            for (var it : problem.accesses()) {
                access(it, i);
            }
        }
        problem.targets().forEach(it -> target(it, sittings));
        for (int i = 1; i <= sittings; i++) {
            int sitting = i;
            rule(problem.targets().stream().flatMap(it -> it.options().stream().filter(way -> !way.needs().isEmpty())
                    .map(way -> of("way " + it.id() + " " + way.id() + " " + sitting))).mapToInt(Integer::intValue).toArray());
        }
        problem.targets().forEach(it -> it.before().forEach(id -> order(id, it.id(), sittings)));
        return optimum(sittings);
    }

    private void closing(String id, long cost, List<String> asked) {
        int own = of("closing " + id, cost);
        asked.forEach(other -> rule(-own, of("closing " + other)));
    }

    private void access(AccessNode it, int i) {
        int open = of("open " + it.id() + " " + i);
        int begun = of("begun " + it.id() + " " + i, it.strip() + it.refit());
        int kept = of("kept " + it.id() + " " + i);
        rule(-open, begun, kept);
        it.needs().forEach(need -> rule(either(-open, need, "open ", i)));
        it.needs().forEach(need -> rule(either(-kept, need, "kept ", i)));
        rule(-kept, open);
        if (i > 1) {
            rule(-kept, of("open " + it.id() + " " + (i - 1)));
        } else if (!problem.open().contains(it.id())) {
            rule(-kept);
        }
        it.closing().forEach(f -> rule(-begun, of("closing " + f)));
        for (var other : problem.accesses()) {
            if (reach(it.id()).stream().anyMatch(held -> reach(other.id()).stream().anyMatch(also ->
                    accesses.get(held).notWith().contains(also)))) {
                rule(-open, -of("open " + other.id() + " " + i));
            }
        }
    }

    private Set<String> reach(String id) {
        var found = new TreeSet<String>();
        var left = new ArrayList<>(List.of(id));
        while (!left.isEmpty()) {
            var next = left.remove(0);
            if (found.add(next)) {
                left.addAll(accesses.get(next).covers());
            }
        }
        return found;
    }

    private List<String> openers(List<String> need) {
        return problem.accesses().stream().map(AccessNode::id).filter(id -> reach(id).stream().anyMatch(need::contains)).toList();
    }

    private int[] either(int literal, List<String> need, String state, int i) {
        var all = new VecInt().push(literal);
        openers(need).forEach(id -> all.push(of(state + id + " " + i)));
        return java.util.Arrays.copyOf(all.toArray(), all.size());
    }

    private void target(Target it, int sittings) {
        var any = new VecInt();
        for (var way : it.options()) {
            for (int i = way.needs().isEmpty() ? 0 : 1; i <= (way.needs().isEmpty() ? 0 : sittings); i++) {
                int own = of("way " + it.id() + " " + way.id() + " " + i, way.cost());
                any.push(own);
                int sitting = i;
                way.needs().forEach(need -> rule(either(-own, need, "open ", sitting)));
                it.closing().forEach(f -> rule(-own, of("closing " + f)));
            }
        }
        rule(java.util.Arrays.copyOf(any.toArray(), any.size()));
    }

    /** A way that is not in a sitting passes the order on: whoever came before its target comes before what it precedes. */
    private void order(String early, String late, int sittings) {
        for (int i = 1; i <= sittings; i++) {
            // "by I": the target and all that must precede it are done in a sitting up to I.
            for (var way : target(late).options()) {
                if (!way.needs().isEmpty()) {
                    rule(-of("way " + late + " " + way.id() + " " + i), of("by " + early + " " + i));
                }
            }
            rule(-of("by " + late + " " + i), of("by " + early + " " + i));
        }
        for (int i = 1; i <= sittings; i++) {
            for (var way : target(early).options()) {
                for (int j = i + 1; j <= sittings && !way.needs().isEmpty(); j++) {
                    rule(-of("by " + early + " " + i), -of("way " + early + " " + way.id() + " " + j));
                }
            }
        }
    }

    private Target target(String id) {
        return problem.targets().stream().filter(it -> it.id().equals(id)).findFirst().orElseThrow();
    }

    private OptionalLong optimum(int sittings) throws TimeoutException {
        while (true) {
            var model = model();
            if (model == null) {
                return OptionalLong.empty();
            }
            int known = clauses.size();
            for (int i = 1; i <= sittings; i++) {
                cut("open ", i, model);
                cut("kept ", i, model);
            }
            if (clauses.size() == known) {
                return OptionalLong.of(costs.entrySet().stream().filter(it -> model.contains(it.getKey()))
                        .mapToLong(Map.Entry::getValue).sum());
            }
        }
    }

    private void cut(String state, int i, Set<Integer> model) {
        var open = problem.accesses().stream().filter(it -> model.contains(of(state + it.id() + " " + i))).toList();
        var stands = new TreeSet<String>();
        while (open.stream().anyMatch(it -> !stands.contains(it.id()) && it.needs().stream()
                .allMatch(need -> openers(need).stream().anyMatch(stands::contains)) && stands.add(it.id()))) {
            continue;
        }
        var circle = open.stream().filter(it -> !stands.contains(it.id())).toList();
        if (!circle.isEmpty()) {
            var literals = new TreeSet<Integer>();
            circle.forEach(it -> literals.add(-of(state + it.id() + " " + i)));
            circle.forEach(it -> it.needs().forEach(need -> openers(need).stream()
                    .filter(id -> !stands.contains(id) && circle.stream().noneMatch(own -> own.id().equals(id)))
                    .forEach(id -> literals.add(of(state + id + " " + i)))));
            rule(literals.stream().mapToInt(Integer::intValue).toArray());
        }
    }

    private Set<Integer> model() throws TimeoutException {
        try {
            var solver = SolverFactory.newDefault();
            solver.newVar(names.size() + 1);
            for (var clause : clauses) {
                solver.addClause(new VecInt(clause));
            }
            var variables = new VecInt();
            var factors = new Vec<BigInteger>();
            costs.forEach((variable, cost) -> {
                variables.push(variable);
                factors.push(BigInteger.valueOf(cost));
            });
            solver.setObjectiveFunction(new ObjectiveFunction(variables, factors));
            var optimiser = new OptToPBSATAdapter(new PseudoOptDecorator(solver));
            optimiser.setTimeout(120);
            if (!optimiser.isSatisfiable()) {
                return null;
            }
            var model = new TreeSet<Integer>();
            for (int literal : optimiser.model()) {
                model.add(literal);
            }
            return model;
        } catch (ContradictionException e) {
            return null;
        }
    }
}
