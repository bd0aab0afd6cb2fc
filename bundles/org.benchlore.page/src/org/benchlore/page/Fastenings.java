// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Fastening;
import org.benchlore.model.Procedure;
import org.benchlore.model.RenewRule;
import org.benchlore.model.SequencePattern;
import org.benchlore.model.Stage;
import org.benchlore.model.Step;
import org.benchlore.model.Work;

/** Writes fastenings: a line below its step, and all of them in one torque table. */
final class Fastenings {

    private static final String STAGES_MISSING = "torque " + Texts.NOT_RECORDED;

    private final Links links;

    Fastenings(Links links) {
        this.links = links;
    }

    /** Returns stages in words: '20 N·m, then 60 N·m, then 90 °'. */
    static String stages(Fastening fastening) {
        return fastening.getStages().isEmpty() ? STAGES_MISSING
                : fastening.getStages().stream().map(Fastenings::stage).collect(Collectors.joining(", then "));
    }

    private static String stage(Stage stage) {
        var words = switch (stage.getKind()) {
            case TORQUE -> known(stage.getTorque(), STAGES_MISSING);
            case ANGLE -> known(stage.getAngle(), "angle " + Texts.NOT_RECORDED);
            case LOOSEN -> ("loosen " + known(stage.getAngle(), "")).trim();
            case WAIT -> "wait " + known(stage.getWait(), "(time " + Texts.NOT_RECORDED + ")");
            case NOT_RECORDED -> known(stage.getTorque(), known(stage.getAngle(), "stage " + Texts.NOT_RECORDED));
        };
        return stage.getText() == null || stage.getText().isBlank() ? words : words + " (" + stage.getText() + ")";
    }

    private static String known(Object value, String otherwise) {
        return value == null ? otherwise : value.toString();
    }

    /** Returns a fastening as a line. */
    List<Span> line(Fastening fastening) {
        return Spans.join("; ", List.of(
                Spans.concat(Spans.of("Tighten "), Spans.of(Names.of(fastening)), Spans.of(", ", size(fastening)),
                        List.of(Span.of(": "), Span.strong(stages(fastening)))),
                Spans.of(order(fastening)), Spans.of(renew(fastening)), Spans.of(friction(fastening)),
                Spans.before("part ", links.to(fastening.getPart())),
                Spans.of(Stated.by("torque", fastening.getStatedBy())),
                Spans.before("source: ", links.cited(fastening.getSource()))));
    }

    private static String size(Fastening fastening) {
        return Stream.of(known(fastening.getThread(), ""), known(fastening.getPropertyClass(), ""),
                fastening.getCount() == null ? "" : fastening.getCount() + " off")
                .filter(text -> !text.isBlank()).collect(Collectors.joining(", "));
    }

    private static String order(Fastening fastening) {
        if (fastening.getPattern() == SequencePattern.NOT_RECORDED) {
            return "";
        }
        return Labels.of(fastening.getPattern())
                + (fastening.getOrder() == null ? "" : ": " + fastening.getOrder());
    }

    private static String renew(Fastening fastening) {
        if (fastening.getRenew() == RenewRule.NOT_RECORDED) {
            return "whether they are used again: " + Texts.NOT_RECORDED;
        }
        return Labels.of(fastening.getRenew())
                + (fastening.getMaxLength() == null ? "" : ", up to " + fastening.getMaxLength());
    }

    private static String friction(Fastening fastening) {
        return switch (fastening.getFriction()) {
            case NOT_RECORDED -> "";
            default -> Labels.of(fastening.getFriction());
        };
    }

    /** Writes every fastening of several works in one table; the work is named where there is more than one. */
    void table(Sheet sheet, List<Work> works) {
        var rows = new Rows("Torque table", "Step", Texts.PLACE, "Thread", "Class", "Count", "Torque and stages",
                "Used again", "Sequence", Texts.STATED_BY);
        for (var work : works) {
            for (var step : work.getSteps()) {
                step.getFastenings().forEach(fastening -> row(rows, stepName(step, work, works), fastening));
            }
        }
        if (!rows.isEmpty()) {
            sheet.markDangerous();
            sheet.table(rows);
        }
    }

    private static String stepName(Step step, Work work, List<Work> works) {
        boolean isOnlyOne = works.size() == 1 && work.eContainer().eContainer() instanceof Procedure;
        return (isOnlyOne ? "" : Names.of(work) + ", ") + Names.number(step);
    }

    private static void row(Rows rows, String step, Fastening fastening) {
        rows.row(Spans.of(step), Spans.of(Names.of(fastening)), Spans.of(fastening.getThread()),
                Spans.of(fastening.getPropertyClass()), Spans.of(known(fastening.getCount(), Texts.NOT_RECORDED)),
                List.of(Span.strong(stages(fastening))),
                Spans.of(fastening.getRenew() == RenewRule.NOT_RECORDED ? Texts.NOT_RECORDED : renew(fastening)),
                Spans.of(order(fastening)), Spans.of(Labels.of(fastening.getStatedBy())));
    }
}
