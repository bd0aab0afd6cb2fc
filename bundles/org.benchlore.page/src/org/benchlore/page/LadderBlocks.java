// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.diagnose.ladder.Item;
import org.benchlore.diagnose.ladder.Ladder;
import org.benchlore.diagnose.ladder.Rung;

/** Writes the ladder: what to look at when all is new and it still fails. */
final class LadderBlocks {

    private final Sheet sheet;

    LadderBlocks(Sheet sheet) {
        this.sheet = sheet;
    }

    void write(Ladder ladder) {
        sheet.heading(2, "When all is new and it still fails");
        ladder.job().ifPresent(job -> sheet.labelled("Read from", DiagnosisPage.link(job)));
        ladder.next().ifPresent(item -> sheet.labelled("Now", Spans.of(item.text()
                + (item.detail().isEmpty() ? "" : ": " + item.detail()))));
        int number = 1;
        for (var rung : ladder.rungs()) {
            write(number++, rung);
        }
        sheet.bullets(3, Ladder.ASKS, ladder.killed().stream().map(Spans::of).toList());
    }

    private void write(int number, Rung rung) {
        sheet.heading(3, number + ". " + rung.kind().words());
        if (rung.items().isEmpty()) {
            sheet.paragraph(Spans.of(rung.kind() == Rung.Kind.CONDITIONS ? "No teach-in belongs to this work." : "Nothing recorded."));
        }
        sheet.bullets(rung.items().stream().map(LadderBlocks::line).toList());
    }

    private static List<Span> line(Item item) {
        List<Span> text = item.address().<List<Span>>map(place -> List.of(new Span.Link(item.text(), place)))
                .orElseGet(() -> Spans.of(item.text()));
        return Spans.join(": ", List.of(Spans.concat(Spans.of(mark(item.state())), text), Spans.of(item.detail())));
    }

    private static String mark(Item.State state) {
        return switch (state) {
            case OPEN -> "[ ] ";
            case GOOD -> "[good] ";
            case BAD -> "[wrong] ";
        };
    }
}
