// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.review;

import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.check.Problem;
import org.benchlore.check.Severity;
import org.benchlore.check.review.PackEntry;
import org.benchlore.model.Procedure;
import org.benchlore.workshop.ReviewDesk.Look;
import org.eclipse.osgi.util.NLS;

/** Says what a reviewer looks at. */
final class LookWords {

    private static final String BULLET = "\u2022 ";

    private final String title;

    LookWords(String title) {
        this.title = title;
    }

    String standing(Look look) {
        var procedure = look.procedure();
        var where = switch (look.standing()) {
            case DRAFT -> Messages.standsDraft;
            case AS_REVIEWED -> NLS.bind(Messages.standsReviewed, day(procedure));
            case REVIEWED_WITHOUT_SUM -> Messages.standsUnknown;
            case CHANGED_SINCE -> NLS.bind(Messages.standsChanged, day(procedure));
            case WITHDRAWN -> NLS.bind(Messages.standsWithdrawn, procedure.getWithdrawnReason());
        };
        return procedure.getRevision() == null ? NLS.bind(Messages.titleAndStanding, title, where)
                : NLS.bind(Messages.titleRevisionAndStanding, new Object[] {title, procedure.getRevision(), where});
    }

    private static String day(Procedure procedure) {
        return procedure.getReviewedOn() == null ? Messages.unknownDay : procedure.getReviewedOn().toString();
    }

    String changes(Look look) {
        return look.since().map(since -> since.sentences().isEmpty() ? Messages.nothingChanged : bullets(since.sentences()))
                .orElseGet(() -> withoutCopy(look));
    }

    /** No copy is needed where the sum of what was reviewed is still the same. */
    private static String withoutCopy(Look look) {
        return switch (look.standing()) {
            case AS_REVIEWED -> Messages.nothingChanged;
            default -> look.procedure().getReviewedOn() == null ? Messages.neverReviewed : Messages.noCopy;
        };
    }

    String problems(Look look) {
        var all = look.problems().open();
        return all.isEmpty() ? Messages.noProblems : bullets(all.stream().map(LookWords::line).toList());
    }

    private static String line(Problem problem) {
        var grave = problem.severity() == Severity.ERROR ? Messages.error : Messages.warning;
        return problem.place().isEmpty() ? NLS.bind(Messages.problem, grave, problem.sentence())
                : NLS.bind(Messages.problemAt, new Object[] {grave, problem.place(), problem.sentence()});
    }

    String packs(Look look) {
        return look.packs().isEmpty() ? Messages.noPacks
                : bullets(look.packs().stream().map(pack -> line(pack, look.procedure().getId())).toList());
    }

    private static String line(PackEntry pack, String id) {
        return pack.revision(id).map(revision -> NLS.bind(Messages.packWithRevision,
                new Object[] {pack.on(), pack.title(), pack.out(), revision}))
                .orElseGet(() -> NLS.bind(Messages.pack, new Object[] {pack.on(), pack.title(), pack.out()}));
    }

    static String bullets(List<String> sentences) {
        return sentences.stream().map(sentence -> BULLET + sentence).collect(Collectors.joining("\n"));
    }
}
