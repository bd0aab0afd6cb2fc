// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.page.Block.Banner;
import org.benchlore.page.Block.Bullets;
import org.benchlore.page.Block.Drawn;
import org.benchlore.page.Block.HazardPanel;
import org.benchlore.page.Block.Heading;
import org.benchlore.page.Block.Numbered;
import org.benchlore.page.Block.Pairs;
import org.benchlore.page.Block.Paragraph;
import org.benchlore.page.Block.Picture;
import org.benchlore.page.Block.Table;

/** Blocks as lines of plain text. What belongs to a step is set in below its number. */
final class TextBlocks implements BlockVisitor<List<String>> {

    private static final String STEP_INDENT = "    ";
    private static final String SIGN = "Signed: ____________  Date: ____________";

    private final int width;
    private final Set<String> namedFiles = new HashSet<>();
    private String indent = "";
    private boolean afterHazard;

    TextBlocks(int width) {
        this.width = width;
    }

    /** Tells whether a block follows the one before without an empty line: a hazard stays with its step. */
    boolean isTight(Block block) {
        boolean warned = afterHazard;
        afterHazard = block instanceof HazardPanel;
        return warned && (block instanceof Numbered || block instanceof HazardPanel)
                || !indent.isEmpty() && (block instanceof Paragraph || block instanceof Bullets);
    }

    @Override
    public List<String> heading(Heading heading) {
        indent = "";
        var text = Wrapping.clean(heading.text()).replace('\n', ' ');
        if (heading.level() > 2) {
            return Wrapping.wrap(text + ":", width);
        }
        var lines = new ArrayList<>(Wrapping.wrap(text, width));
        int longest = lines.stream().mapToInt(Wrapping::width).max().orElse(0);
        lines.add((heading.level() == 1 ? "=" : "-").repeat(longest));
        return lines;
    }

    @Override
    public List<String> paragraph(Paragraph paragraph) {
        return setIn(Wrapping.wrap(text(paragraph.spans()), width - indent.length()));
    }

    @Override
    public List<String> banner(Banner banner) {
        indent = "";
        var mark = switch (banner.tone()) {
            case INVENTED -> "";
            case STOP -> "STOP: ";
            case ATTENTION -> "ATTENTION: ";
            case CAUTION -> "CAUTION: ";
        };
        return Wrapping.hanging("*** ", mark + banner.text(), width);
    }

    @Override
    public List<String> hazard(HazardPanel hazard) {
        indent = "";
        int inner = width - 4;
        var signal = Labels.signal(hazard.signal());
        var lines = new ArrayList<String>();
        lines.add("+-- " + signal + " " + "-".repeat(Math.max(1, inner - signal.length() - 2)) + "+");
        Stream.of(hazard.kind(), hazard.consequence(), hazard.avoidance()).filter(text -> !text.isBlank())
                .flatMap(text -> Wrapping.wrap(text, inner).stream())
                .forEach(line -> lines.add("| " + Wrapping.pad(line, inner) + " |"));
        lines.add("+" + "-".repeat(inner + 2) + "+");
        return lines;
    }

    @Override
    public List<String> pairs(Pairs pairs) {
        indent = "";
        int label = pairs.pairs().stream().mapToInt(pair -> Wrapping.width(pair.label()) + 2).max().orElse(0);
        if (label > width / 2) {
            return pairs.pairs().stream().flatMap(pair -> Wrapping.wrap(pair.label() + ": " + text(pair.value()), width)
                    .stream()).toList();
        }
        return pairs.pairs().stream().flatMap(pair -> Wrapping.hanging(Wrapping.pad(pair.label() + ":", label),
                text(pair.value()), width).stream()).toList();
    }

    @Override
    public List<String> table(Table table) {
        indent = "";
        var rows = table.rows().stream().map(row -> row.stream().map(this::text).toList()).toList();
        var lines = new ArrayList<String>();
        if (!table.caption().isBlank()) {
            lines.addAll(Wrapping.wrap(table.caption() + ":", width));
        }
        lines.addAll(new TextTable(table.header(), rows, width).lines());
        return lines;
    }

    @Override
    public List<String> bullets(Bullets bullets) {
        int inner = width - indent.length();
        return setIn(bullets.items().stream().flatMap(item -> Wrapping.hanging(mark(item, inner),
                text(Indent.without(item)), inner).stream()).toList());
    }

    private static String mark(List<Span> item, int inner) {
        return " ".repeat(Math.min(2 * Indent.level(item), inner / 2)) + "- ";
    }

    @Override
    public List<String> numbered(Numbered step) {
        indent = STEP_INDENT;
        var mark = Wrapping.pad(step.number() + ".", STEP_INDENT.length() - 1) + " ";
        var label = step.label().isEmpty() ? "" : step.label() + ": ";
        var lines = new ArrayList<>(Wrapping.hanging(mark, label + text(step.text()), width));
        if (step.signOff()) {
            lines.addAll(Wrapping.hanging(STEP_INDENT, SIGN, width));
        }
        return lines;
    }

    @Override
    public List<String> picture(Picture picture) {
        var caption = picture.caption().isBlank() ? "" : ": " + picture.caption();
        return setIn(Wrapping.wrap("[picture " + picture.file() + caption + "]", width - indent.length()));
    }

    @Override
    public List<String> drawn(Drawn drawn) {
        return setIn(Wrapping.wrap("[drawing: " + drawn.drawing().title() + ". " + drawn.drawing().description() + "]",
                width - indent.length()));
    }

    private List<String> setIn(List<String> lines) {
        return lines.stream().map(line -> indent + line).toList();
    }

    private String text(List<Span> spans) {
        return spans.stream().map(span -> span instanceof Span.Link link ? link(link) : span.text())
                .collect(Collectors.joining());
    }

    /** What lies within a file is read on the file's page, so its id is what can be shown; once is enough. */
    private String link(Span.Link link) {
        var file = fileId(link.target());
        boolean known = !namedFiles.add(file) && !file.equals(link.target().id());
        return known ? link.text() : link.text() + " [" + file + "]";
    }

    private static String fileId(Address target) {
        var file = target.path().substring(target.path().lastIndexOf('/') + 1);
        return file.endsWith(Kind.ENDING) ? file.substring(0, file.length() - Kind.ENDING.length()) : target.id();
    }
}
