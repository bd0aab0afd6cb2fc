// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The accesses of a problem by number, in order of their ids, and what follows from covering. */
final class Net {

    private final List<AccessNode> accesses;
    private final Map<String, Integer> numbers = new TreeMap<>();
    private final List<Set<Integer>> holding = new ArrayList<>();
    private final List<Set<Integer>> openers = new ArrayList<>();
    private final boolean[][] foes;

    Net(List<AccessNode> accesses) throws PlanException {
        this.accesses = accesses;
        accesses.forEach(access -> numbers.put(access.id(), numbers.size()));
        for (int i = 0; i < accesses.size(); i++) {
            openers.add(new TreeSet<>());
        }
        for (int i = 0; i < accesses.size(); i++) {
            holding.add(holdingWith(i));
            for (int held : holding.get(i)) {
                openers.get(held).add(i);
            }
        }
        this.foes = findFoes();
    }

    private Set<Integer> holdingWith(int access) throws PlanException {
        var found = new TreeSet<Integer>();
        var left = new ArrayDeque<Integer>(List.of(access));
        while (!left.isEmpty()) {
            int next = left.pop();
            if (found.add(next)) {
                for (var id : accesses.get(next).covers()) {
                    left.add(number(id, accesses.get(next).id()));
                }
            }
        }
        return found;
    }

    private boolean[][] findFoes() throws PlanException {
        var direct = new boolean[size()][size()];
        for (int i = 0; i < size(); i++) {
            for (var id : accesses.get(i).notWith()) {
                int other = number(id, accesses.get(i).id());
                direct[i][other] = true;
                direct[other][i] = true;
            }
        }
        var found = new boolean[size()][size()];
        for (int i = 0; i < size(); i++) {
            for (int j = 0; j < size(); j++) {
                found[i][j] = areFoes(direct, holding.get(i), holding.get(j));
            }
        }
        return found;
    }

    private static boolean areFoes(boolean[][] direct, Set<Integer> some, Set<Integer> others) {
        return some.stream().anyMatch(one -> others.stream().anyMatch(other -> direct[one][other]));
    }

    int number(String id, String named) throws PlanException {
        var number = numbers.get(id);
        if (number == null) {
            throw new PlanException("'" + named + "' names the access '" + id + "', which this machine does not have; write it"
                    + " down or name another one", List.of(named, id));
        }
        return number;
    }

    int size() {
        return accesses.size();
    }

    AccessNode access(int number) {
        return accesses.get(number);
    }

    String id(int number) {
        return accesses.get(number).id();
    }

    boolean areFoes(int one, int other) {
        return foes[one][other];
    }

    /** For each need the accesses that meet it when they are open. */
    List<int[]> openers(List<List<String>> needs, String named) throws PlanException {
        var found = new ArrayList<int[]>();
        for (var need : needs) {
            var any = new TreeSet<Integer>();
            for (var id : need) {
                any.addAll(openers.get(number(id, named)));
            }
            found.add(any.stream().mapToInt(Integer::intValue).toArray());
        }
        return found;
    }

    List<int[]> needs(int access) throws PlanException {
        return openers(accesses.get(access).needs(), id(access));
    }

    /** Everything that may have to be opened for some needs, and what is open already. */
    Set<Integer> relevant(List<int[]> needs, Set<Integer> open) throws PlanException {
        var found = new TreeSet<>(open);
        var left = new ArrayDeque<>(needs);
        for (int access : open) {
            left.addAll(needs(access));
        }
        while (!left.isEmpty()) {
            for (int access : left.pop()) {
                if (found.add(access)) {
                    left.addAll(needs(access));
                }
            }
        }
        return found;
    }

    /** Those of some accesses that can be opened one by one after others, in the order in which that is possible. */
    List<Integer> opening(Set<Integer> some, Set<Integer> after) throws PlanException {
        var order = new ArrayList<Integer>();
        var isOpen = new HashSet<>(after);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int access : new TreeSet<>(some)) {
                if (!isOpen.contains(access) && isMet(needs(access), isOpen)) {
                    isOpen.add(access);
                    order.add(access);
                    changed = true;
                }
            }
        }
        return order;
    }

    static boolean isMet(List<int[]> needs, Set<Integer> open) {
        return needs.stream().allMatch(need -> Arrays.stream(need).anyMatch(open::contains));
    }
}
