// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/** Every target in a sitting of its own, all closed in between: a plan that always exists if each target has one. */
final class OneByOne {

    private final PlanProblem problem;
    private final Net net;
    private final long most;
    private final List<Sitting> sittings = new ArrayList<>();
    private final TreeMap<String, String> anywhere = new TreeMap<>();
    private final TreeSet<String> closings = new TreeSet<>();
    private long cost;

    OneByOne(PlanProblem problem, Net net, long most) {
        this.problem = problem;
        this.net = net;
        this.most = most;
    }

    /** Plans; the bound is given by the caller. */
    Solution solve(long fixed, long bound) throws PlanException {
        var open = new PlanProblem(problem.accesses(), List.of(), problem.closings(), problem.open(), problem.due());
        add(new PlanSearch(most).solve(open), true);
        cost -= fixed;
        for (var target : inOrder()) {
            var alone = new PlanProblem(problem.accesses(), List.of(target), problem.closings(), List.of(), List.of());
            add(alone(alone, target), false);
        }
        return new Solution(List.copyOf(sittings), anywhere, List.copyOf(closings), cost + fixed + closingCost(), bound, 0);
    }

    private Solution alone(PlanProblem alone, Target target) throws PlanException {
        Solution least = null;
        for (int count = 0; count <= 1; count++) {
            var expansion = new Expansion(alone, net, count, false);
            var search = new CoverSearch(expansion.cover(), least == null ? CoverBound.NEVER : least.cost(), most);
            var chosen = search.run();
            least = chosen.isEmpty() ? least : new Decoder(alone, net).decode(expansion, chosen.get(), search.cost(), 0, 0);
        }
        if (least == null) {
            throw new Obstacles(problem, net).foes(target);
        }
        return least;
    }

    private void add(Solution part, boolean isStart) {
        sittings.addAll(isStart ? List.of() : part.sittings());
        anywhere.putAll(part.anywhere());
        closings.addAll(part.closings());
        cost += part.cost() - problem.closings().stream().filter(it -> part.closings().contains(it.id()))
                .mapToLong(ClosingWork::cost).sum();
    }

    private long closingCost() {
        return problem.closings().stream().filter(it -> closings.contains(it.id())).mapToLong(ClosingWork::cost).sum();
    }

    private List<Target> inOrder() {
        var isBefore = Openings.order(problem.targets());
        var order = new ArrayList<Integer>();
        while (order.size() < problem.targets().size()) {
            for (int next = 0; next < problem.targets().size(); next++) {
                int late = next;
                if (!order.contains(next) && problem.targets().stream().map(problem.targets()::indexOf)
                        .noneMatch(early -> isBefore[early][late] && !order.contains(early))) {
                    order.add(next);
                }
            }
        }
        return order.stream().map(problem.targets()::get).toList();
    }
}
