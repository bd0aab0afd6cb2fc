// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.diagnose.Assessment;
import org.benchlore.diagnose.Finding;
import org.benchlore.diagnose.FunctionChain;
import org.benchlore.diagnose.Named;
import org.benchlore.diagnose.Near;
import org.benchlore.diagnose.RankedCause;
import org.benchlore.diagnose.Words;
import org.benchlore.page.Block.Pair;
import org.benchlore.page.Block.Pairs;
import org.benchlore.page.Block.Tone;

/** Makes the page of what may be wrong, for the terminal, for the window and as HTML. */
public final class DiagnosisPage {

    private final boolean invented;

    /**
     * Makes a maker of such pages.
     *
     * @param invented whether the library holds invented data
     */
    public DiagnosisPage(boolean invented) {
        this.invented = invented;
    }

    /**
     * Makes the page of an answer.
     *
     * @param answer the answer
     * @return its page; the caution stands last
     */
    public Page of(Assessment answer) {
        return page(answer, true);
    }

    /**
     * Makes the page for a window that takes answers by itself: it does not say how to type them.
     *
     * @param answer the answer
     * @return its page; the caution stands last
     */
    public Page onScreen(Assessment answer) {
        return page(answer, false);
    }

    private Page page(Assessment answer, boolean typed) {
        var sheet = new Sheet();
        var title = "What may be wrong: " + answer.about().title();
        sheet.heading(1, title);
        if (invented) {
            sheet.banner(Tone.INVENTED, Texts.INVENTED);
        }
        asked(sheet, answer);
        answer.remarks().forEach(remark -> sheet.banner(Tone.ATTENTION, remark));
        unknown(sheet, answer);
        causes(sheet, answer);
        ruledOut(sheet, answer);
        new CheckBlocks(sheet, typed).write(answer.checks());
        answer.ladder().ifPresent(new LadderBlocks(sheet)::write);
        answer.chain().filter(chain -> !answer.isKnown() || answer.ladder().isPresent()).ifPresent(chain -> chain(sheet, chain));
        sheet.banner(Tone.CAUTION, Assessment.CAUTION);
        return new Page(title, sheet.blocks());
    }

    private static void asked(Sheet sheet, Assessment answer) {
        var pairs = new ArrayList<Pair>();
        for (var finding : answer.findings()) {
            pairs.add(new Pair(finding.isCode() ? "Code" : "Symptom", finding.code()
                    .map(code -> List.<Span>of(new Span.Link(finding.label(), code)))
                    .orElseGet(() -> Spans.of(finding.label()))));
        }
        answer.ladder().ifPresent(ladder -> pairs.add(new Pair("After", link(ladder.work()))));
        answer.path().steps().forEach(step -> pairs.add(new Pair(step.recorded() ? "From the job record" : "Answered",
                Spans.join(": ", List.of(link(step.check()), Spans.of(step.result()))))));
        if (!pairs.isEmpty()) {
            sheet.add(new Pairs(List.copyOf(pairs)));
        }
    }

    private static void unknown(Sheet sheet, Assessment answer) {
        if (!answer.unknown().isEmpty()) {
            sheet.paragraph(Spans.of("Nothing is known here of: " + answer.unknown().stream().map(Finding::label)
                    .collect(Collectors.joining("; ")) + standing(answer)));
        }
        nearest(sheet, answer);
        if (!answer.together().isEmpty()) {
            sheet.paragraph(Spans.of(Words.together(answer.together())));
        }
    }

    /** Nobody but the reader can say whether one of these is what was meant. */
    private static void nearest(Sheet sheet, Assessment answer) {
        if (!answer.nearest().isEmpty()) {
            sheet.paragraph(Spans.of("What is written that comes nearest in words; if one is meant, ask with its words:"));
            sheet.bullets(answer.nearest().stream().map(DiagnosisPage::near).toList());
        }
    }

    private static List<Span> near(Near near) {
        var causes = links(near.causes());
        return near.causes().stream().anyMatch(cause -> cause.title().equals(near.words())) ? causes
                : Spans.join(": ", List.of(Spans.of("'" + near.words() + "'"), causes));
    }

    private static String standing(Assessment answer) {
        return answer.isKnown() ? "." : answer.chain().isPresent()
                ? ". What makes the function work stands below; what was not renewed comes first."
                : ", and no function of the machine is named by it: say what it does not do any more, or name the component.";
    }

    private static void causes(Sheet sheet, Assessment answer) {
        if (answer.isKnown()) {
            sheet.heading(2, "Causes, the likeliest first");
            int number = 1;
            for (var cause : answer.causes()) {
                cause(sheet, number++, cause);
            }
            sheet.paragraph(Spans.of((answer.others() > 0 ? answer.others() + " more causes are less likely. " : "")
                    + Words.elsewhere(answer)));
        }
    }

    private static void cause(Sheet sheet, int number, RankedCause cause) {
        sheet.heading(3, number + ". " + cause.title() + ": " + Words.chance(cause));
        if (cause.critical()) {
            sheet.banner(Tone.ATTENTION, "Its failure can hurt somebody: look here before the machine moves again.");
        }
        var lines = new ArrayList<List<Span>>();
        lines.add(Spans.concat(Spans.of("Sits in: "), link(cause.component())));
        lines.add(Spans.of("How often: " + Words.counted(cause.counted())));
        cause.moves().forEach(move -> lines.add(Spans.of(Labels.capital(Words.move(cause, move)))));
        cause.witnesses().forEach(witness -> lines.add(Spans.concat(Spans.of(Labels.capital(Words.witness(witness)) + ": "),
                List.of(new Span.Link(witness.title(), witness.address())))));
        lines.add(Spans.of("How sure: " + Words.sure(cause)));
        lines.add(Spans.before("What may have brought it about: ", links(cause.broughtAboutBy())));
        lines.add(Spans.before("What it may have spoiled: ", links(cause.spoils())));
        lines.add(Spans.of("Proved by: ", cause.proof()));
        lines.add(Spans.before("What is done about it: ", links(cause.cures())));
        sheet.bullets(lines.stream().filter(line -> !line.isEmpty()).toList());
    }

    private static void ruledOut(Sheet sheet, Assessment answer) {
        sheet.bullets(2, "Looked like this, was not", answer.ruledOut().stream().map(one -> Spans.join(": ", List.of(
                link(one.suspect()), Spans.of(one.finding()), link(one.note())))).toList());
    }

    private static void chain(Sheet sheet, FunctionChain chain) {
        sheet.heading(2, "All that makes it work: " + chain.function().title());
        sheet.paragraph(Spans.of(chain.text()));
        var rows = new Rows("Members of the chain", Texts.COMPONENT, "Renewed", "Known to go wrong");
        chain.members().stream().sorted(java.util.Comparator.comparing(FunctionChain.Member::renewed)).forEach(member ->
                rows.row(link(member.component()), Spans.of(member.renewed() ? member.when() : "not renewed"),
                        links(member.causes())));
        sheet.table(rows);
    }

    static List<Span> link(Named named) {
        return List.of(new Span.Link(named.title(), named.address()));
    }

    static List<Span> links(List<Named> all) {
        return Spans.join(", ", all.stream().map(DiagnosisPage::link).toList());
    }
}
