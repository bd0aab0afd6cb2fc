// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.Map;
import java.util.Optional;

import org.benchlore.page.Page;
import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Proposal;
import org.benchlore.ui.plan.FormLines;

/**
 * What came of a question, ready to be shown.
 *
 * @param lines what stands in the form
 * @param own the answer with the shop's own figures, if there is one
 * @param adding the same with figures of one's own
 * @param pages a page for each proposal
 * @param instead what is read where there is no proposal
 */
record Weighed(FormLines lines, Optional<Adding> own, Optional<Adding> adding, Map<String, Page> pages, Page instead) {

    boolean isEmpty() {
        return pages.isEmpty();
    }

    Optional<Proposal> proposal(String id) {
        return adding.flatMap(it -> it.proposal(id));
    }
}
