// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.model.Address;
import org.benchlore.page.Block.Tone;

/** What the rules found, as a page: by file, errors first, then what somebody decided to live with. */
public final class ProblemList {

    private final String title;
    private final int files;

    /**
     * One problem as it is read.
     *
     * @param severity {@code error} or {@code warning}
     * @param at where it is
     * @param element what people call the file's element
     * @param place where in the file, in words; empty for the whole file
     * @param sentence what is wrong and what to do
     * @param rule id of the rule
     * @param reason why it is silenced; empty where it is not
     */
    public record Line(String severity, Address at, String element, String place, String sentence, String rule, String reason) {

        boolean isError() {
            return severity.equals("error");
        }
    }

    /**
     * Makes a list.
     *
     * @param title what was checked
     * @param files how many files were looked at
     */
    public ProblemList(String title, int files) {
        this.title = title;
        this.files = files;
    }

    /** Makes the page of open and of silenced problems, each in order. */
    public Page page(List<Line> open, List<Line> silenced) {
        var sheet = new Sheet();
        sheet.heading(1, title);
        long errors = open.stream().filter(Line::isError).count();
        if (errors > 0) {
            sheet.banner(Tone.ATTENTION, "Mend the errors before anybody works by these pages.");
        }
        sheet.paragraph(List.of(Span.of(count(errors, "error") + ", " + count(open.size() - errors, "warning") + ", "
                + count(silenced.size(), "one", "silenced with a reason") + " in " + count(files, "file") + ".")));
        byFile(open, sheet);
        sheet.bullets(2, "Silenced with a reason", silenced.stream().map(line -> Spans.concat(item(line),
                Spans.of(" Reason: ", line.reason()))).toList());
        return new Page(title, sheet.blocks());
    }

    private static String count(long number, String what, String... instead) {
        return number + " " + (instead.length > 0 ? instead[0] : number == 1 ? what : what + "s");
    }

    private static void byFile(List<Line> lines, Sheet sheet) {
        var files = lines.stream().collect(Collectors.groupingBy(line -> line.at().path(), LinkedHashMap::new, Collectors.toList()));
        files.values().forEach(of -> sheet.bullets(2, of.get(0).element(), of.stream().map(ProblemList::item).toList()));
    }

    private static List<Span> item(Line line) {
        var place = line.place().isEmpty() ? line.element() : line.place();
        return List.of(Span.strong(line.isError() ? "Error" : "Warning"), Span.of(" at "), new Span.Link(place, line.at()),
                Span.of(": " + line.sentence() + ". (" + line.rule() + ")"));
    }
}
