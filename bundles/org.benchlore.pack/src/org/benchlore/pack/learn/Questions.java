// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Fastening;
import org.benchlore.model.Hazard;
import org.benchlore.model.Measurement;
import org.benchlore.model.Procedure;
import org.benchlore.model.RenewRule;
import org.benchlore.model.Signal;
import org.benchlore.model.StageKind;
import org.benchlore.model.Step;
import org.benchlore.model.TopElement;
import org.benchlore.model.Way;
import org.benchlore.model.Work;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.store.TextReferences;

/**
 * Makes questions out of what a procedure says, each of whole facts only: the worst hazard first, then a limit, a torque,
 * a fastener that is not used again, a reason, what follows after closing. One of each sort before a second of any; a fact
 * that is not written down makes no question.
 */
public final class Questions {

    /** How many are asked of one procedure, where it says enough. */
    public static final int MOST = 3;

    private static final int LONGEST = 220;
    private static final List<Signal> WORST_FIRST = List.of(Signal.DANGER, Signal.WARNING, Signal.CAUTION);

    private final Library library;

    /**
     * Makes questions from a library.
     *
     * @param library asked for titles
     */
    public Questions(Library library) {
        this.library = library;
    }

    /**
     * Makes the questions of a procedure.
     *
     * @param procedure a procedure
     * @return at most three; fewer where it does not say enough
     */
    public List<Question> of(Procedure procedure) {
        var works = procedure.getWays().stream().map(Way::getWork).filter(Objects::nonNull).toList();
        var steps = works.stream().flatMap(work -> work.getSteps().stream()).toList();
        var sorts = List.of(hazards(works, steps), limits(steps), torques(steps), renewed(steps), reasons(steps), after(procedure));
        var chosen = new LinkedHashMap<String, Question>();
        for (int round = 0; round < MOST; round++) {
            for (var sort : sorts) {
                if (round < sort.size() && chosen.size() < MOST) {
                    chosen.putIfAbsent(sort.get(round).question(), sort.get(round));
                }
            }
        }
        return List.copyOf(chosen.values());
    }

    private List<Question> hazards(List<Work> works, List<Step> steps) {
        var all = Stream.concat(works.stream().flatMap(work -> work.getHazards().stream()),
                steps.stream().flatMap(step -> step.getHazards().stream())).toList();
        var found = new ArrayList<Question>();
        for (var signal : WORST_FIRST) {
            all.stream().filter(hazard -> hazard.getSignal() == signal && isWhole(hazard)).forEach(hazard -> found.add(new Question(
                    signal.getLiteral() + ", " + small(hazard.getKind()) + ": what can happen, and what do you do so that it does not?",
                    sentence(hazard.getConsequence()) + " " + plain(hazard.getAvoidance()))));
        }
        return found;
    }

    private static boolean isWhole(Hazard hazard) {
        return isWritten(hazard.getKind()) && isWritten(hazard.getConsequence()) && isWritten(hazard.getAvoidance());
    }

    private List<Question> limits(List<Step> steps) {
        return steps.stream().flatMap(step -> step.getMeasurements().stream()).filter(it -> isWritten(it.getWhat()) && !limits(it).isEmpty())
                .map(it -> new Question("What do you measure" + (isWritten(it.getPlace()) ? " at: " + small(it.getPlace()) : "")
                        + " (" + small(it.getWhat()) + "), and within what limits?", limits(it))).toList();
    }

    private static String limits(Measurement it) {
        return Stream.of(said("nominal ", it.getNominal()),
                it.getLow() != null && it.getHigh() != null ? it.getLow() + " to " + it.getHigh()
                        : it.getLow() != null ? "at least " + it.getLow() : said("at most ", it.getHigh()),
                said("renew beyond ", it.getWearLimit())).filter(words -> !words.isEmpty()).collect(Collectors.joining(", "));
    }

    private List<Question> torques(List<Step> steps) {
        return steps.stream().flatMap(step -> step.getFastenings().stream()).filter(it -> isWritten(it.getPlace()) && !stages(it).isEmpty())
                .map(it -> new Question("How is this tightened: " + small(it.getPlace()) + (isWritten(it.getThread()) ? " (" + it.getThread() + ")"
                        : "") + "?", stages(it))).toList();
    }

    /** Every stage in words, empty where one of them says no value. */
    private static String stages(Fastening fastening) {
        var words = fastening.getStages().stream().map(stage -> stage.getKind() == StageKind.TORQUE ? said("", stage.getTorque())
                : stage.getKind() == StageKind.ANGLE ? said("", stage.getAngle()) + (stage.getAngle() == null ? "" : " further")
                        : stage.getKind() == StageKind.WAIT ? said("wait ", stage.getWait()) : "loosen").toList();
        return words.contains("") ? "" : String.join(", then ", words);
    }

    private List<Question> renewed(List<Step> steps) {
        return steps.stream().flatMap(step -> step.getFastenings().stream()).filter(it -> isWritten(it.getPlace()))
                .filter(it -> it.getRenew() == RenewRule.RENEW || it.getRenew() == RenewRule.REUSE_WITHIN_LENGTH && it.getMaxLength() != null)
                .map(it -> new Question("May the fasteners here be used again: " + small(it.getPlace()) + "?",
                        it.getRenew() == RenewRule.RENEW ? "No, they are renewed every time."
                                : "Only up to a length of " + it.getMaxLength() + "; longer ones are renewed.")).toList();
    }

    private List<Question> reasons(List<Step> steps) {
        return steps.stream().filter(step -> isWritten(step.getWhy()) && isWritten(step.getText()))
                .map(step -> new Question("Why is this done: “" + shortened(plain(step.getText())) + "”?", plain(step.getWhy()))).toList();
    }

    private List<Question> after(Procedure procedure) {
        var titles = procedure.getAfterClosing().stream().map(next -> library.resolve(next).filter(TopElement.class::isInstance)
                .map(TopElement.class::cast).flatMap(top -> library.catalogue().byId(top.getId())).map(Row::title).orElse("")).toList();
        return titles.isEmpty() || titles.contains("") ? List.of()
                : List.of(new Question("What must follow after closing?", String.join("; ", titles) + "."));
    }

    private String plain(String text) {
        return TextReferences.plain(text, library.catalogue()).strip().replaceAll("\\s+", " ");
    }

    private static String shortened(String text) {
        if (text.length() <= LONGEST) {
            return text;
        }
        int sentence = text.indexOf(". ");
        return sentence > 0 && sentence <= LONGEST ? text.substring(0, sentence + 1)
                : text.substring(0, text.lastIndexOf(' ', LONGEST)) + " …";
    }

    private static String sentence(String text) {
        var words = text.strip();
        return words.matches(".*[.!?]") ? words : words + ".";
    }

    /** The first letter small, unless the word is an abbreviation or a number. */
    private static String small(String words) {
        var text = words.strip();
        return text.length() > 1 && Character.isLowerCase(text.charAt(1)) ? text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1)
                : text;
    }

    private static String said(String before, Object value) {
        return value == null ? "" : before + value;
    }

    private static boolean isWritten(String text) {
        return text != null && !text.isBlank();
    }
}
