// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.List;

/**
 * What a check found.
 *
 * @param open problems to be mended: errors first, then by file and place
 * @param silenced problems that somebody decided to live with
 * @param files how many files were looked at
 */
public record Report(List<Problem> open, List<Silenced> silenced, int files) {

    /** How many errors there are. */
    public long errors() {
        return open.stream().filter(problem -> problem.severity() == Severity.ERROR).count();
    }

    /** How many warnings there are. */
    public long warnings() {
        return open.size() - errors();
    }

    /** Only what is in one file. */
    public Report of(String path) {
        return new Report(open.stream().filter(problem -> problem.at().path().equals(path)).toList(),
                silenced.stream().filter(one -> one.problem().at().path().equals(path)).toList(), 1);
    }
}
