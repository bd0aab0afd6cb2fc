// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import java.util.List;
import java.util.Optional;

import org.benchlore.diagnose.Assessment;
import org.benchlore.diagnose.Near;
import org.benchlore.diagnose.NextCheck;
import org.benchlore.page.Page;

/**
 * What comes of a question.
 *
 * @param assessment the answer, empty if there is none
 * @param page what is shown
 */
record Outcome(Optional<Assessment> assessment, Page page) {

    static Outcome of(Assessment assessment, Page page) {
        return new Outcome(Optional.of(assessment), page);
    }

    static Outcome refused(String sentence, boolean isInvented) {
        return new Outcome(Optional.empty(), Asked.page(sentence, isInvented));
    }

    /** The checks that can be made now, in order. */
    List<NextCheck> checks() {
        return assessment.map(one -> one.checks().order()).orElse(List.of());
    }

    /** What may be meant, where nothing is known. */
    List<Near> nearest() {
        return assessment.filter(one -> !one.isKnown()).map(Assessment::nearest).orElse(List.of());
    }
}
