// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.Arrays;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

/**
 * Pairs two lists of elements without ids: first the longest common row of equal ones, then, between two such pairs,
 * those of the same type in order, which are then two versions of one.
 */
final class Alignment {

    private static final int NONE = -1;

    private final List<EObject> before;
    private final List<EObject> after;
    private final int[] partner;

    private Alignment(List<EObject> before, List<EObject> after) {
        this.before = before;
        this.after = after;
        this.partner = new int[after.size()];
        Arrays.fill(partner, NONE);
    }

    /** For each of the later list, the index of its partner in the earlier one, or -1. */
    static int[] of(List<EObject> before, List<EObject> after) {
        var alignment = new Alignment(before, after);
        alignment.pairEqual();
        alignment.pairBetween();
        return alignment.partner;
    }

    private void pairEqual() {
        int[][] length = lengths();
        int i = 0;
        int j = 0;
        while (i < before.size() && j < after.size()) {
            if (Same.deep(before.get(i), after.get(j))) {
                partner[j++] = i++;
            } else if (length[i + 1][j] >= length[i][j + 1]) {
                i++;
            } else {
                j++;
            }
        }
    }

    private int[][] lengths() {
        var length = new int[before.size() + 1][after.size() + 1];
        for (int i = before.size() - 1; i >= 0; i--) {
            for (int j = after.size() - 1; j >= 0; j--) {
                length[i][j] = Same.deep(before.get(i), after.get(j)) ? length[i + 1][j + 1] + 1
                        : Math.max(length[i + 1][j], length[i][j + 1]);
            }
        }
        return length;
    }

    private void pairBetween() {
        int free = 0;
        for (int j = 0; j < partner.length; j++) {
            if (partner[j] != NONE) {
                free = partner[j] + 1;
            } else if (free < limit(j) && before.get(free).eClass() == after.get(j).eClass()) {
                partner[j] = free++;
            }
        }
    }

    /** The next earlier element that has a partner already, or the end. */
    private int limit(int from) {
        for (int j = from; j < partner.length; j++) {
            if (partner[j] != NONE) {
                return partner[j];
            }
        }
        return before.size();
    }
}
