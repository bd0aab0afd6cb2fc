// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.benchlore.check.Problem;
import org.benchlore.check.Severity;
import org.benchlore.model.Address;
import org.benchlore.store.Catalogue;
import org.benchlore.store.FileProblem;
import org.benchlore.store.Row;
import org.benchlore.ui.session.Checking;
import org.benchlore.ui.session.Opened;
import org.eclipse.osgi.util.NLS;

/** Makes the lines of the list: files that cannot be read first, then errors, warnings and what is silenced. */
final class ProblemRows {

    private final Opened opened;

    ProblemRows(Opened opened) {
        this.opened = opened;
    }

    List<ProblemRow> of(Optional<Checking.Found> checked, boolean withSilenced) {
        var rows = new ArrayList<ProblemRow>();
        var files = checked.map(found -> found.unsaid(opened.problems())).orElse(opened.problems());
        files.stream().sorted(Comparator.comparing(FileProblem::severity).thenComparing(FileProblem::path)
                .thenComparing(FileProblem::line)).map(ProblemRows::file).forEach(rows::add);
        checked.map(Checking.Found::report).ifPresent(found -> {
            found.open().forEach(problem -> rows.add(open(problem)));
            if (withSilenced) {
                found.silenced().forEach(one -> rows.add(row(ProblemRow.Sort.SILENCED, one.problem(),
                        NLS.bind(Messages.silencedBecause, one.problem().sentence(), one.reason()))));
            }
        });
        rows.sort(Comparator.comparing(ProblemRow::sort));
        return rows;
    }

    private static ProblemRow file(FileProblem problem) {
        var place = problem.line() > 0 ? problem.path() + ":" + problem.line() : problem.path();
        var sort = problem.severity() == FileProblem.Severity.MISFIT ? ProblemRow.Sort.WARNING : ProblemRow.Sort.ERROR;
        return new ProblemRow(sort, new Address(problem.path(), problem.path()), place, problem.reason(), Optional.empty());
    }

    private ProblemRow open(Problem problem) {
        return row(problem.severity() == Severity.ERROR ? ProblemRow.Sort.ERROR : ProblemRow.Sort.WARNING, problem,
                problem.sentence());
    }

    private ProblemRow row(ProblemRow.Sort sort, Problem problem, String sentence) {
        var title = opened.library().library().catalogue().entry(problem.at().path()).flatMap(Catalogue.Entry::row)
                .map(Row::title).orElse(problem.at().path());
        var element = problem.place().isEmpty() ? title : NLS.bind(Messages.elementAndPlace, title, problem.place());
        return new ProblemRow(sort, problem.at(), element, sentence, Optional.of(problem));
    }
}
