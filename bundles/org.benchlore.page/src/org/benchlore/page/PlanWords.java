// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Verification;
import org.benchlore.plan.PlanItem;

/** Words for the items of a plan. */
final class PlanWords {

    private PlanWords() {
    }

    static String title(PlanItem item) {
        return item.proof().map(PlanWords::proof).orElse(item.title());
    }

    /** A proof in words: 'trial run, 20 km, 45 min'. */
    static String proof(Verification proof) {
        var words = Labels.capital(Labels.of(proof.getKind()));
        return Stream.of(words, known("", proof.getDistance()), known("", proof.getDuration()), known("load ", proof.getLoad()),
                starts(proof), known("after standing ", proof.getSoak()))
                .filter(text -> !text.isEmpty()).collect(Collectors.joining(", "));
    }

    /** 'one start', '5 starts', nothing if it is not written down. */
    static String starts(Verification proof) {
        return proof.getStarts() == null ? "" : proof.getStarts() == 1 ? "one start" : proof.getStarts() + " starts";
    }

    private static String known(String before, Object value) {
        return value == null ? "" : before + value;
    }
}
