// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The best order of a few checks, from the last check backwards: for every set that is done, what to do next. */
final class ExactOrder {

    private final List<Check> checks;
    private final double[] open;
    private final double[] missing;
    private final double[] rest;
    private final int[] next;

    ExactOrder(List<Check> checks, AccessCost access, Map<String, Double> chances) {
        this.checks = checks;
        int sets = 1 << checks.size();
        open = new double[sets];
        missing = new double[sets];
        rest = new double[sets];
        next = new int[sets];
        for (int set = 0; set < sets; set++) {
            open[set] = access.minutes(opened(set));
            missing[set] = 1 - found(set).stream().sorted().mapToDouble(id -> chances.getOrDefault(id, 0.0)).sum();
        }
        for (int done = sets - 2; done >= 0; done--) {
            decide(done);
        }
    }

    private Set<String> opened(int set) {
        var all = new HashSet<String>();
        for (int i = 0; i < checks.size(); i++) {
            if ((set >> i & 1) == 1) {
                all.addAll(checks.get(i).opens());
            }
        }
        return all;
    }

    private Set<String> found(int set) {
        var all = new HashSet<String>();
        for (int i = 0; i < checks.size(); i++) {
            if ((set >> i & 1) == 1) {
                all.addAll(checks.get(i).finds());
            }
        }
        return all;
    }

    private void decide(int done) {
        rest[done] = Double.MAX_VALUE;
        for (int i = 0; i < checks.size(); i++) {
            if ((done >> i & 1) == 0 && mayBeNext(i, done)) {
                int after = done | 1 << i;
                var time = (checks.get(i).minutes() + open[after] - open[done]) * missing[done] + rest[after];
                if (time < rest[done]) {
                    rest[done] = time;
                    next[done] = i;
                }
            }
        }
    }

    private boolean mayBeNext(int check, int done) {
        if (checks.get(check).urgent()) {
            return true;
        }
        for (int i = 0; i < checks.size(); i++) {
            if (checks.get(i).urgent() && (done >> i & 1) == 0) {
                return false;
            }
        }
        return true;
    }

    List<Check> order() {
        var order = new ArrayList<Check>();
        int done = 0;
        while (order.size() < checks.size()) {
            order.add(checks.get(next[done]));
            done |= 1 << next[done];
        }
        return order;
    }
}
