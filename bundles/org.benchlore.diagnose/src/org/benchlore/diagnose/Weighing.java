// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.benchlore.diagnose.book.Candidate;
import org.benchlore.diagnose.book.Candidates;
import org.benchlore.diagnose.book.CaseInHand;
import org.benchlore.diagnose.book.Circumstance;
import org.benchlore.diagnose.book.Counting;
import org.benchlore.diagnose.book.Links;
import org.benchlore.diagnose.book.Replies.Answered;
import org.benchlore.diagnose.book.WorkDone;
import org.benchlore.diagnose.chance.Clue;
import org.benchlore.diagnose.chance.FaultModel;
import org.benchlore.diagnose.chance.Suspect;
import org.benchlore.model.Address;
import org.benchlore.model.WeightKind;

/** Turns a case into suspects and clues: the one place where the library meets the arithmetic. */
final class Weighing {

    /** What stands in no book; it shows everything a little and nothing speaks against it. */
    static final String ELSEWHERE = "elsewhere";

    /**
     * A candidate with what is known of it.
     *
     * @param candidate the candidate
     * @param counted how often it was met
     * @param circumstances what the work done says of it
     * @param witnesses what ties it to the findings
     */
    record Weighed(Candidate candidate, Counted counted, List<Circumstance> circumstances, List<Witness> witnesses) {

        Suspect suspect() {
            return suspect(counted.prior());
        }

        Suspect suspect(double prior) {
            var suspect = new Suspect(candidate.id(), prior);
            for (var circumstance : circumstances) {
                suspect = suspect.times(circumstance.factor());
            }
            return suspect;
        }

        double link(Finding finding) {
            return witnesses.stream().filter(witness -> witness.finding().filter(finding.id()::equals).isPresent())
                    .mapToDouble(Witness::weight).max().orElse(0);
        }
    }

    private final CaseInHand now;
    private final List<Weighed> weighed = new ArrayList<>();
    private final Map<String, Clue> clues = new LinkedHashMap<>();
    private boolean isAllWeighed = true;

    Weighing(CaseInHand now) {
        this.now = now;
        var links = new Links(now.book(), now.file(), now.words(), now.weights());
        var counting = new Counting(now.file(), now.weights(), now.probes().changing(),
                now.work().map(WorkDone::with).orElse(java.util.Set.of()), now.job());
        for (var candidate : new Candidates(now.book(), now.file(), now.words()).of(now.findings())) {
            var witnesses = now.findings().stream().flatMap(finding -> links.of(candidate, finding).stream()).toList();
            weighed.add(new Weighed(candidate, counting.of(candidate), Circumstance.of(now, candidate), witnesses));
        }
        now.answered().forEach(this::clue);
        telling().forEach(this::clue);
    }

    /**
     * Beside what is known, words that no paper has speak for nothing and against nothing: they may be another's words for it.
     * A code is no matter of words; and where nothing is known, that is what there is to say.
     */
    private List<Finding> telling() {
        var known = now.findings().stream().filter(finding -> weighed.stream().anyMatch(one -> one.link(finding) > 0)).toList();
        return known.isEmpty() ? now.findings()
                : now.findings().stream().filter(finding -> finding.isCode() || known.contains(finding)).toList();
    }

    /** Answers come first: where there is more than can be weighed, they tell more than a complaint. */
    private void clue(Answered answered) {
        var strength = now.weights().of(WeightKind.CHECK_SHOWS);
        add(label(answered), new Clue(label(answered), now.weights().of(WeightKind.CHECK_STRAY),
                strengths(answered.outcome().points(), strength), strengths(answered.outcome().against(), strength)));
    }

    static String label(Answered answered) {
        return "'" + answered.shown() + "' (" + answered.probe().procedure().title() + ")";
    }

    private Map<String, Double> strengths(Iterable<Address> causes, double strength) {
        var all = new LinkedHashMap<String, Double>();
        causes.forEach(cause -> all.put(cause.toString(), strength));
        return all;
    }

    private void clue(Finding finding) {
        var shows = new LinkedHashMap<String, Double>();
        weighed.forEach(one -> shows.put(one.candidate().id(), one.link(finding)));
        shows.values().removeIf(weight -> weight <= 0);
        shows.put(ELSEWHERE, now.weights().of(WeightKind.ELSE_LINKS));
        add(finding.label(), new Clue(finding.id(), now.weights().of(WeightKind.STRAY), shows, Map.of()));
    }

    private void add(String label, Clue clue) {
        if (clue.shows().isEmpty() || clues.values().stream().filter(one -> !one.shows().isEmpty()).count()
                < FaultModel.MOST_CLUES) {
            clues.put(label, clue);
        } else {
            isAllWeighed = false;
        }
    }

    List<Weighed> weighed() {
        return weighed;
    }

    /** What is weighed, by its label. */
    Map<String, Clue> clues() {
        return clues;
    }

    boolean isAllWeighed() {
        return isAllWeighed;
    }

    List<Suspect> suspects() {
        var all = new ArrayList<>(weighed.stream().map(Weighed::suspect).toList());
        all.add(new Suspect(ELSEWHERE, now.weights().of(WeightKind.SOMETHING_ELSE)));
        return all;
    }

    Map<String, Double> posterior() {
        return new FaultModel(suspects(), List.copyOf(clues.values())).posterior();
    }

    /** How likely a candidate would be without one clue. */
    double without(String label, String id) {
        var fewer = new LinkedHashMap<>(clues);
        fewer.remove(label);
        return new FaultModel(suspects(), List.copyOf(fewer.values())).posterior(id);
    }

    /** How likely a candidate would be if it had been this likely before. */
    double with(Suspect suspect) {
        var all = suspects().stream().map(one -> one.id().equals(suspect.id()) ? suspect : one).toList();
        return new FaultModel(all, List.copyOf(clues.values())).posterior(suspect.id());
    }

    /** Notes and jobs that count for a candidate whatever they say of these findings. */
    List<Witness> papers(Candidate candidate) {
        return new Links(now.book(), now.file(), now.words(), now.weights()).papers(candidate);
    }
}
