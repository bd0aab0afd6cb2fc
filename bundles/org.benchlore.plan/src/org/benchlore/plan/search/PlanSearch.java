// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

/**
 * Finds the cheapest plan by branch and bound. First without what must not be open together: its cost is a bound for all
 * plans, and mostly it is the plan. Only then with one sitting, two and so on, each search starting from the best cost so
 * far. Deterministic: the search is cut off by branches, never by time.
 */
public final class PlanSearch {

    /** Branches after which a search is cut off: about two seconds. */
    public static final long USUAL_BRANCHES = 20_000;

    private final long most;

    /**
     * Makes a search.
     *
     * @param most most branches looked at for one plan
     */
    public PlanSearch(long most) {
        this.most = most;
    }

    /**
     * Finds the cheapest plan.
     *
     * @param problem what is to be planned
     * @return the plan, exact or with its gap
     * @throws PlanException if there is none, naming what stands in the way
     */
    public Solution solve(PlanProblem problem) throws PlanException {
        var net = new Net(problem.accesses());
        new Obstacles(problem, net).check();
        return new Run(problem, net).solve();
    }

    /** One search. */
    private final class Run {

        private final PlanProblem problem;
        private final Net net;
        private final long fixed;
        private long branches;
        private boolean isCutOff;
        private Solution found;

        Run(PlanProblem problem, Net net) {
            this.problem = problem;
            this.net = net;
            this.fixed = problem.accesses().stream().filter(access -> problem.open().contains(access.id()))
                    .mapToLong(AccessNode::refit).sum();
        }

        Solution solve() throws PlanException {
            int mostSittings = Openings.mostSittings(problem);
            var relaxed = new Expansion(problem, net, Math.min(1, mostSittings), true);
            var search = new CoverSearch(relaxed.cover(), CoverBound.NEVER, most);
            var chosen = search.run();
            branches = search.branches();
            if (chosen.isEmpty()) {
                throw search.isCutOff() ? Obstacles.cutOff(problem) : Obstacles.unknown(problem);
            }
            long bound = (search.isCutOff() ? search.bound() : search.cost()) + fixed;
            if (relaxed.sittings() == 0 || !Openings.hasFoes(net, relaxed.open(chosen.get(), 0))) {
                return new Decoder(problem, net).decode(relaxed, chosen.get(), search.cost() + fixed, bound, branches);
            }
            found = new OneByOne(problem, net, most).solve(fixed, bound);
            for (int sittings = 0; sittings <= mostSittings && found.cost() > bound; sittings++) {
                attempt(sittings);
            }
            return new Solution(found.sittings(), found.anywhere(), found.closings(), found.cost(),
                    isCutOff ? bound : found.cost(), branches);
        }

        private void attempt(int sittings) throws PlanException {
            var expansion = new Expansion(problem, net, sittings, false);
            var search = new CoverSearch(expansion.cover(), found.cost() - fixed, Math.max(1, most - branches));
            var chosen = search.run();
            branches += search.branches();
            isCutOff |= search.isCutOff();
            if (chosen.isPresent()) {
                found = new Decoder(problem, net).decode(expansion, chosen.get(), search.cost() + fixed, 0, branches);
            }
        }
    }
}
