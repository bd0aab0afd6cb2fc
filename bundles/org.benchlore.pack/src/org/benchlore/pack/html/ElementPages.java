// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.Measurement;
import org.benchlore.model.Procedure;
import org.benchlore.model.Status;
import org.benchlore.model.Step;
import org.benchlore.model.TopElement;
import org.benchlore.page.Block;
import org.benchlore.page.HtmlRenderer;
import org.benchlore.page.Page;
import org.benchlore.page.Pages;
import org.benchlore.store.Library;

/**
 * Writes the page of an element as a part of a pack: what the page of the library says, with a place to jump to at every
 * step and access, and boxes for ticks, values and initials after each step.
 */
final class ElementPages {

    private final Library library;
    private final Pages pages;
    private final HtmlRenderer renderer;

    ElementPages(Library library) {
        this.library = library;
        this.pages = new Pages(library);
        this.renderer = new HtmlRenderer(this::address, file -> Optional.of("../media/" + file));
    }

    private Optional<String> address(Address target) {
        return library.catalogue().at(target).map(row -> row.id() + ".html" + (Places.isPlace(library, target) ? "#" + target.id() : ""));
    }

    Page page(TopElement element) {
        return pages.of(element);
    }

    /** The HTML of the page itself, to stand within a shell. */
    String body(TopElement element, Page page) {
        var html = new StringBuilder();
        var places = new Places(element);
        boolean hasSteps = places.hasSteps();
        List<String> boxes = new ArrayList<>();
        for (var block : page.blocks()) {
            if (!(block instanceof Block.Bullets) && !(block instanceof Block.Paragraph)) {
                boxes.forEach(html::append);
                boxes.clear();
            }
            html.append(block(block, places, boxes)).append('\n');
            if (block instanceof Block.Heading heading && heading.level() == 1 && hasSteps) {
                html.append(tools());
            }
        }
        boxes.forEach(html::append);
        return html.toString();
    }

    private static String tools() {
        return """
                <div class="tools"><button type="button" data-do="print" hidden>Print</button>\
                <button type="button" data-do="clear" hidden>Clear my ticks</button>\
                <span class="screen-only">Ticks and values stay on this device only.</span>\
                <strong class="not-kept" hidden>This browser keeps nothing for this page: print it before you close it.</strong></div>
                """;
    }

    private String block(Block block, Places places, List<String> boxes) {
        if (block instanceof Block.Numbered numbered && places.hasSteps()) {
            var step = places.nextStep();
            boxes.add(boxes(step, numbered));
            // The boxes take the place of the dotted line for the signature.
            var without = new Block.Numbered(numbered.number(), numbered.label(), numbered.text(), false);
            return Places.named(renderer.block(without), "<p", step.getId());
        }
        var html = block instanceof Block.Table table ? table(table) : renderer.block(block);
        return places.named(block, html);
    }

    /** A table that is wider than the screen can be moved by keys, and says on a small screen what each cell is. */
    private String table(Block.Table table) {
        var html = renderer.block(table).replaceFirst("<div class=\"wide\">", "<div class=\"wide\" tabindex=\"0\" role=\"group\""
                + " aria-label=\"" + java.util.regex.Matcher.quoteReplacement(Html.text(table.caption())) + "\">");
        var marked = new StringBuilder();
        int column = 0;
        int from = 0;
        for (int at = html.indexOf("<t"); at >= 0; at = html.indexOf("<t", from)) {
            marked.append(html, from, at);
            if (html.startsWith("<td>", at)) {
                marked.append("<td data-head=\"").append(Html.text(table.header().get(column++ % table.header().size()))).append("\">");
                from = at + 4;
            } else {
                marked.append("<t");
                from = at + 2;
            }
        }
        return marked.append(html.substring(from)).toString();
    }

    private static String boxes(Step step, Block.Numbered numbered) {
        var id = Html.text(Objects.requireNonNullElse(step.getId(), "step-" + numbered.number()));
        var html = new StringBuilder("<div class=\"boxes\" role=\"group\" aria-label=\"Step " + Html.text(numbered.number()) + "\">\n");
        html.append("<label><input type=\"checkbox\" data-keep=\"").append(id).append(":done\">Done</label>\n");
        int number = 0;
        for (Measurement measurement : step.getMeasurements()) {
            html.append("<label>").append(Html.text(what(measurement))).append(" <input type=\"text\" autocomplete=\"off\" data-keep=\"")
                    .append(id).append(":value-").append(++number).append("\"></label>\n");
        }
        if (step.isSignOff()) {
            html.append("<label class=\"short\">Initials <input type=\"text\" autocomplete=\"off\" maxlength=\"8\" data-keep=\"").append(id)
                    .append(":by\"></label>\n<label>Date <input type=\"text\" autocomplete=\"off\" maxlength=\"12\" data-keep=\"").append(id)
                    .append(":on\"></label>\n");
        }
        return html.append("</div>\n").toString();
    }

    private static String what(Measurement measurement) {
        return "Measured: " + (measurement.getWhat() == null || measurement.getWhat().isBlank() ? "value" : measurement.getWhat());
    }

    static String mark(TopElement element) {
        if (!(element instanceof Procedure procedure)) {
            return "";
        }
        return procedure.getStatus() == Status.DRAFT ? "DRAFT" : procedure.getStatus() == Status.WITHDRAWN ? "WITHDRAWN" : "";
    }

    static String revision(TopElement element) {
        if (!(element instanceof Procedure procedure)) {
            return "";
        }
        return (procedure.getRevision() == null ? "Revision not recorded" : "Revision " + procedure.getRevision())
                + (procedure.getReviewedOn() == null ? "" : ", reviewed " + procedure.getReviewedOn());
    }
}
