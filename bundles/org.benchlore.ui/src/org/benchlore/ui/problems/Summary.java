// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import java.util.List;
import java.util.Optional;

import org.benchlore.ui.session.Checking;
import org.eclipse.osgi.util.NLS;

/** Says in one line what was checked and what came of it. */
final class Summary {

    private final Optional<Checking.Found> found;

    Summary(Optional<Checking.Found> found) {
        this.found = found;
    }

    String of(List<ProblemRow> all, List<ProblemRow> shown) {
        if (found.isEmpty()) {
            return Messages.checking;
        }
        long errors = count(all, ProblemRow.Sort.ERROR);
        long warnings = count(all, ProblemRow.Sort.WARNING);
        var counts = errors + warnings == 0 ? Messages.noProblems
                : NLS.bind(Messages.counts, number(errors, Messages.oneError, Messages.errors),
                        number(warnings, Messages.oneWarning, Messages.warnings));
        var whole = NLS.bind(Messages.whatWasChecked, new Object[] {counts, found.get().report().files(),
            found.get().rules().size(), found.get().report().silenced().size()});
        return shown.size() == all.size() ? whole
                : NLS.bind(Messages.someShown, new Object[] {shown.size(), all.size(), whole});
    }

    private static long count(List<ProblemRow> rows, ProblemRow.Sort sort) {
        return rows.stream().filter(row -> row.sort() == sort).count();
    }

    private static String number(long count, String one, String several) {
        return count == 1 ? one : NLS.bind(several, count);
    }
}
