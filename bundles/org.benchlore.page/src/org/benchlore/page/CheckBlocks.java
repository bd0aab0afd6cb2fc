// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.diagnose.Checks;
import org.benchlore.diagnose.NextCheck;
import org.benchlore.diagnose.Words;
import org.benchlore.page.Block.Numbered;

/** Writes what to check next, in order. */
final class CheckBlocks {

    private final Sheet sheet;
    private final boolean typed;

    /** Makes it; where answers are typed, each check says how. */
    CheckBlocks(Sheet sheet, boolean typed) {
        this.sheet = sheet;
        this.typed = typed;
    }

    void write(Checks checks) {
        if (checks.order().isEmpty()) {
            return;
        }
        sheet.heading(2, "What to check next");
        sheet.paragraph(Spans.of(Words.time(checks) + " Opening is counted once, closing is not. "
                + "The hazards of a check stand in its procedure: read it first."));
        int number = 1;
        for (var check : checks.order()) {
            write(number++, check);
        }
    }

    private void write(int number, NextCheck check) {
        sheet.add(new Numbered(String.valueOf(number), check.critical() ? "First, since it can hurt somebody" : "",
                Spans.concat(DiagnosisPage.link(check.procedure()), Spans.of(": " + check.text())), false));
        var lines = new ArrayList<List<Span>>();
        lines.add(Spans.of(time(check)));
        lines.add(Spans.before("To be opened for it: ", DiagnosisPage.links(check.opens())));
        for (var result : check.results()) {
            lines.add(Spans.join("; ", List.of(Spans.of(result.answer()),
                    Spans.before("speaks for ", DiagnosisPage.links(result.points())),
                    Spans.before("speaks against ", DiagnosisPage.links(result.against())))));
        }
        if (typed) {
            lines.add(Spans.of("Answer it by: --answer " + check.id() + "=RESULT"));
        }
        sheet.bullets(lines.stream().filter(line -> !line.isEmpty()).toList());
    }

    private static String time(NextCheck check) {
        var alone = Math.round(check.alone()) == Math.round(check.added()) ? ""
                : ", by itself " + Words.minutes(check.alone());
        return "Takes " + Words.minutes(check.added()) + " at this place" + alone
                + (check.timed() ? "" : " (no time recorded, a usual one taken)");
    }
}
