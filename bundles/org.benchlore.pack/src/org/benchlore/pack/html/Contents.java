// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.page.Labels;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/** The page of contents: search, procedures by machine and by what is done, everything else, and what is not here. */
final class Contents {

    private static final List<Kind> OTHERS = List.of(Kind.NOTE, Kind.MACHINE, Kind.CODE, Kind.PART, Kind.TOOL, Kind.SUPPLY, Kind.DOCUMENT,
            Kind.UNIT, Kind.JOB);

    private final Library library;
    private final PackInfo info;

    Contents(Library library, PackInfo info) {
        this.library = library;
        this.info = info;
    }

    String body() {
        var html = new StringBuilder("<h1>" + Html.text(info.title()) + "</h1>\n");
        if (info.isInvented()) {
            html.append("<p class=\"banner invented\">").append(Html.text(Labels.INVENTED)).append("</p>\n");
        }
        html.append("<p class=\"banner caution-banner\">Check against the manufacturer's data for this machine; local rules and a licensed"
                + " person decide.</p>\n");
        html.append("""
                <form id="search-form" role="search" class="tools" action="index.html">
                <label for="search">Search everything in this pack</label>
                <input id="search" name="q" type="search" autocomplete="off"><button>Search</button></form>
                <noscript><p class="banner attention">The search needs scripts, which are switched off here; the list below does not.</p></noscript>
                <p id="said" class="count" role="status"></p>
                <ol id="found" class="contents"></ol>
                <h2>Procedures</h2>
                """);
        procedures(html);
        OTHERS.forEach(kind -> others(html, kind));
        leftOut(html);
        return html.toString();
    }

    private void procedures(StringBuilder html) {
        var machines = new TreeMap<String, Map<String, List<Row>>>();
        library.catalogue().rows(Kind.PROCEDURE).forEach(row -> {
            var names = row.machines().stream().flatMap(address -> library.catalogue().at(address).stream()).map(Row::title).distinct().toList();
            for (var name : names.isEmpty() ? List.of("For every machine") : names) {
                machines.computeIfAbsent(name, key -> new TreeMap<>()).computeIfAbsent(what(row), key -> new ArrayList<>()).add(row);
            }
        });
        machines.forEach((machine, kinds) -> {
            html.append("<h3>").append(Html.text(machine)).append("</h3>\n<ul class=\"contents\">\n");
            kinds.values().forEach(rows -> rows.forEach(row -> item(html, row)));
            html.append("</ul>\n");
        });
    }

    private String what(Row row) {
        return library.top(row.id()).filter(Procedure.class::isInstance).map(top -> Labels.of(((Procedure) top).getKind())).orElse("");
    }

    private void item(StringBuilder html, Row row) {
        var mark = row.kind() != Kind.PROCEDURE ? "" : switch (row.status()) {
            case "DRAFT" -> " <span class=\"mark\">DRAFT</span>";
            case "WITHDRAWN" -> " <span class=\"mark gone\">WITHDRAWN</span>";
            default -> "";
        };
        var what = row.kind() == Kind.PROCEDURE ? "<br><span class=\"kind\">" + Html.text(Labels.capital(what(row))) + revision(row) + "</span>"
                : "";
        html.append("<li><a href=\"pages/").append(row.id()).append(".html\">").append(Html.text(row.title())).append("</a>").append(mark)
                .append(what).append("</li>\n");
    }

    private String revision(Row row) {
        return library.top(row.id()).map(top -> ", " + ElementPages.revision(top).toLowerCase(Locale.ROOT)).map(Html::text).orElse("");
    }

    private void others(StringBuilder html, Kind kind) {
        var rows = new LinkedHashMap<String, Row>();
        library.catalogue().rows(kind).sorted(java.util.Comparator.comparing(Row::title)).forEach(row -> rows.put(row.id(), row));
        if (!rows.isEmpty()) {
            html.append("<details><summary>").append(Labels.capital(Labels.plural(kind))).append(" (").append(rows.size())
                    .append(")</summary>\n<ul class=\"contents\">\n");
            rows.values().forEach(row -> item(html, row));
            html.append("</ul></details>\n");
        }
    }

    private void leftOut(StringBuilder html) {
        html.append("<h2>Not in this pack</h2>\n<ul>\n");
        info.leftOut().forEach(left -> html.append("<li>").append(Html.text(left.what())).append(": ").append(Html.text(left.reason()))
                .append("</li>\n"));
        html.append("<li>documents themselves: only their entries are here, never the documents</li>\n</ul>\n");
    }
}
