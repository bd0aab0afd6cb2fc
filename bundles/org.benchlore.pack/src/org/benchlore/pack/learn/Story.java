// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.learn;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Round;
import org.benchlore.model.RoundKind;
import org.benchlore.page.Labels;
import org.benchlore.pack.Stripping;
import org.benchlore.store.BookFormat;
import org.benchlore.store.KindFacts.JobFacts;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.store.TextReferences;

/**
 * One real job of the shop that went wrong, told without unit, customer, prices and names: a comeback, or one that was
 * stripped again or did not teach in.
 *
 * @param when the year
 * @param complaint what the complaint was
 * @param rounds what happened, in order
 * @param finding what it was in the end
 * @param proof how that was proved
 */
public record Story(String when, String complaint, List<String> rounds, String finding, String proof) {

    /**
     * Finds the job that has most to do with some procedures.
     *
     * @param library the shop's library
     * @param stripping takes out what must not leave the shop
     * @param procedures ids of the procedures that are learned
     * @return the story, or empty if no job of the shop went wrong with them
     */
    public static Optional<Story> of(Library library, Stripping stripping, Collection<String> procedures) {
        return library.catalogue().rows(Kind.JOB).filter(row -> common(row, procedures) > 0)
                .sorted(Comparator.comparingLong((Row row) -> common(row, procedures)).reversed().thenComparing(Row::path))
                .flatMap(row -> told(library, stripping, row).stream()).findFirst();
    }

    private static long common(Row row, Collection<String> procedures) {
        return row.job().map(JobFacts::done).orElse(List.of()).stream().filter(address -> procedures.contains(address.id())).count();
    }

    private static Optional<Story> told(Library library, Stripping stripping, Row row) {
        var job = library.top(row.id()).filter(JobRecord.class::isInstance).map(JobRecord.class::cast).filter(Story::wentWrong);
        return job.flatMap(it -> new BookFormat().read(row.path(), stripping.bytes(row.path(), it)).root()).map(JobRecord.class::cast)
                .map(it -> tell(library, it));
    }

    private static boolean wentWrong(JobRecord job) {
        return job.getComebackOf() != null || job.getRounds().stream()
                .anyMatch(round -> round.getKind() == RoundKind.TEACH_IN_FAILED || round.getKind() == RoundKind.STRIP_AGAIN);
    }

    private static Story tell(Library library, JobRecord job) {
        var rounds = new ArrayList<String>();
        for (Round round : job.getRounds()) {
            var text = plain(library, round.getText());
            if (!text.isEmpty()) {
                rounds.add((round.getKind() == RoundKind.NOT_RECORDED ? "" : Labels.capital(Labels.of(round.getKind())) + ": ") + text);
            }
        }
        return new Story(job.getOpened() == null ? "" : String.valueOf(job.getOpened().getYear()), plain(library, job.getComplaint()), rounds,
                plain(library, job.getFinding()), plain(library, job.getVerification()));
    }

    private static String plain(Library library, String text) {
        return TextReferences.plain(text, library.catalogue()).strip();
    }
}
