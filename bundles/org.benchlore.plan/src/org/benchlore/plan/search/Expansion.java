// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A problem with a number of sittings as a choice problem. For each access and sitting there are three nodes: open,
 * opened for it (costs strip and refit), kept from before (costs nothing, and its needs are kept as well).
 */
final class Expansion {

    private final PlanProblem problem;
    private final Net net;
    private final int sittings;
    private final Cover cover = new Cover();
    private final Set<Integer> open;
    private final List<Integer> accesses;
    private final Map<Integer, Integer> places = new HashMap<>();
    private final int[][] isOpen;
    private final int[][] opened;
    private final int[][] kept;
    private final Map<String, Integer> closings = new HashMap<>();
    private final List<WayNode> ways = new ArrayList<>();

    /**
     * A way as a node.
     *
     * @param target number of the target
     * @param option number of the way
     * @param sitting number of the sitting, or -1 for a way that needs nothing open
     * @param node its node
     */
    record WayNode(int target, int option, int sitting, int node) {
    }

    /** Expands; {@code isRelaxed} leaves out what may not be open together and what must come first. */
    Expansion(PlanProblem problem, Net net, int sittings, boolean isRelaxed) throws PlanException {
        this.problem = problem;
        this.net = net;
        this.sittings = sittings;
        this.open = Openings.numbers(net, problem.open());
        this.accesses = List.copyOf(net.relevant(Openings.allNeeds(problem, net), open));
        accesses.forEach(access -> places.put(access, places.size()));
        this.isOpen = new int[sittings][accesses.size()];
        this.opened = new int[sittings][accesses.size()];
        this.kept = new int[sittings][accesses.size()];
        closings();
        nodes();
        accessClauses();
        targets(isRelaxed);
        if (!isRelaxed) {
            foes();
            reasonsToPart();
            order();
        }
    }

    private void closings() throws PlanException {
        for (var closing : problem.closings()) {
            closings.put(closing.id(), cover.node(closing.cost()));
        }
        for (var closing : problem.closings()) {
            ask(closings.get(closing.id()), closing.closing(), closing.id());
        }
        for (var id : problem.due()) {
            cover.root(closing(id, "the job"));
        }
        for (int access : open) {
            for (var id : net.access(access).closing()) {
                cover.root(closing(id, net.id(access)));
            }
        }
    }

    private int closing(String id, String named) throws PlanException {
        var node = closings.get(id);
        if (node == null) {
            throw new PlanException("'" + named + "' asks for '" + id + "' after closing, which is not written down; write it"
                    + " down or take it out", List.of(named, id));
        }
        return node;
    }

    private void ask(int node, List<String> ids, String named) throws PlanException {
        for (var id : ids) {
            cover.clause(node, closing(id, named));
        }
    }

    private void nodes() throws PlanException {
        for (int sitting = 0; sitting < sittings; sitting++) {
            for (int place = 0; place < accesses.size(); place++) {
                var access = net.access(accesses.get(place));
                isOpen[sitting][place] = cover.node(0);
                opened[sitting][place] = cover.opening(access.strip() + access.refit());
                boolean canBeKept = sitting > 0 || open.contains(accesses.get(place));
                kept[sitting][place] = canBeKept ? cover.node(0) : -1;
                ask(opened[sitting][place], access.closing(), access.id());
            }
        }
    }

    private void accessClauses() throws PlanException {
        for (int sitting = 0; sitting < sittings; sitting++) {
            for (int place = 0; place < accesses.size(); place++) {
                boolean canBeKept = kept[sitting][place] >= 0;
                cover.clause(isOpen[sitting][place], canBeKept
                        ? new int[] {opened[sitting][place], kept[sitting][place]} : new int[] {opened[sitting][place]});
                for (var need : net.needs(accesses.get(place))) {
                    cover.clause(isOpen[sitting][place], nodes(isOpen[sitting], need));
                    if (canBeKept) {
                        cover.clause(kept[sitting][place], nodes(kept[sitting], need));
                    }
                }
                if (sitting > 0) {
                    cover.clause(kept[sitting][place], isOpen[sitting - 1][place]);
                }
            }
        }
    }

    private int[] nodes(int[] of, int[] numbers) {
        return Arrays.stream(numbers).map(number -> of[places.get(number)]).filter(node -> node >= 0).toArray();
    }

    private void targets(boolean isRelaxed) throws PlanException {
        for (int target = 0; target < problem.targets().size(); target++) {
            int from = ways.size();
            for (int option = 0; option < problem.targets().get(target).options().size(); option++) {
                ways(target, option);
            }
            cover.root(ways.subList(from, ways.size()).stream().mapToInt(WayNode::node).toArray());
        }
        for (int sitting = 0; sitting < sittings && !isRelaxed; sitting++) {
            int of = sitting;
            cover.root(ways.stream().filter(way -> way.sitting() == of).mapToInt(WayNode::node).toArray());
        }
    }

    private void ways(int number, int index) throws PlanException {
        var target = problem.targets().get(number);
        var option = target.options().get(index);
        if (option.needs().isEmpty()) {
            way(number, index, -1, List.of());
        }
        for (int sitting = 0; sitting < sittings && !option.needs().isEmpty(); sitting++) {
            way(number, index, sitting, net.openers(option.needs(), target.id()));
        }
    }

    private void way(int number, int index, int sitting, List<int[]> needs) throws PlanException {
        var target = problem.targets().get(number);
        int node = cover.node(target.options().get(index).cost());
        needs.forEach(need -> cover.clause(node, nodes(isOpen[sitting], need)));
        ask(node, target.closing(), target.id());
        ways.add(new WayNode(number, index, sitting, node));
    }

    private void foes() {
        for (int sitting = 0; sitting < sittings; sitting++) {
            for (int one = 0; one < accesses.size(); one++) {
                for (int other = 0; other <= one; other++) {
                    if (net.areFoes(accesses.get(one), accesses.get(other))) {
                        cover.notTogether(isOpen[sitting][one], isOpen[sitting][other]);
                        keptFoes(sitting, one, other);
                        keptFoes(sitting, other, one);
                    }
                }
            }
        }
    }

    /** What is kept from before is open as well, whether anybody needs it or not. */
    private void keptFoes(int sitting, int one, int other) {
        if (kept[sitting][one] >= 0) {
            cover.notTogether(kept[sitting][one], isOpen[sitting][other]);
        }
    }

    /** Two sittings in a row without anything that is not with each other are one: no cheaper plan is lost. */
    private void reasonsToPart() {
        for (int sitting = 1; sitting < sittings; sitting++) {
            var reasons = new ArrayList<Integer>();
            for (int one = 0; one < accesses.size(); one++) {
                for (int other = 0; other < accesses.size(); other++) {
                    if (net.areFoes(accesses.get(one), accesses.get(other))) {
                        int both = cover.node(0);
                        cover.clause(both, isOpen[sitting - 1][one]);
                        cover.clause(both, isOpen[sitting][other]);
                        reasons.add(both);
                    }
                }
            }
            cover.root(reasons.stream().mapToInt(Integer::intValue).toArray());
        }
    }

    private void order() {
        var isBefore = Openings.order(problem.targets());
        for (var late : ways) {
            for (var early : ways) {
                if (isBefore[early.target()][late.target()] && late.sitting() >= 0 && early.sitting() > late.sitting()) {
                    cover.notTogether(late.node(), early.node());
                }
            }
        }
    }

    Cover cover() {
        return cover;
    }

    List<WayNode> ways() {
        return ways;
    }

    int sittings() {
        return sittings;
    }

    Set<Integer> open(boolean[] chosen, int sitting) {
        var found = those(chosen, isOpen[sitting]);
        found.addAll(kept(chosen, sitting));
        return found;
    }

    Set<Integer> kept(boolean[] chosen, int sitting) {
        return those(chosen, kept[sitting]);
    }

    private Set<Integer> those(boolean[] chosen, int[] nodes) {
        var found = new TreeSet<Integer>();
        for (int place = 0; place < nodes.length; place++) {
            if (nodes[place] >= 0 && chosen[nodes[place]]) {
                found.add(accesses.get(place));
            }
        }
        return found;
    }

    List<String> closings(boolean[] chosen) {
        return problem.closings().stream().map(ClosingWork::id).filter(id -> chosen[closings.get(id)]).toList();
    }
}
