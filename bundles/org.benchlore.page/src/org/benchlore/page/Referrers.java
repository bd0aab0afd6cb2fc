// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.model.NoteStatus;
import org.benchlore.store.Row;

/** Writes what refers to an element, counted by kind: field notes first those whose fix held. */
final class Referrers {

    private static final int SHOWN = 25;
    private static final List<String> TRUST = Stream.of(NoteStatus.HELD, NoteStatus.SEEN, NoteStatus.SUSPECTED,
            NoteStatus.UNSORTED, NoteStatus.RULED_OUT, NoteStatus.SUPERSEDED).map(NoteStatus::getLiteral).toList();
    private static final Comparator<Row> ORDER = Comparator.comparingInt(Referrers::trust)
            .thenComparing(row -> row.date().orElse(LocalDate.MIN), Comparator.reverseOrder())
            .thenComparing(Row::title).thenComparing(Row::address);

    private final Scope scope;

    Referrers(Scope scope) {
        this.scope = scope;
    }

    private static int trust(Row row) {
        return row.kind() == Kind.NOTE ? TRUST.indexOf(row.status()) : 0;
    }

    void write(Sheet sheet) {
        write(sheet, Set.of());
    }

    void write(Sheet sheet, Set<Kind> without) {
        var rows = rows().filter(row -> !without.contains(row.kind())).toList();
        if (!rows.isEmpty()) {
            sheet.heading(2, "What refers to this");
            for (var kind : Kind.values()) {
                list(sheet, kind, rows.stream().filter(row -> row.kind() == kind).toList());
            }
        }
    }

    /** Writes the field notes that speak of the element, in a section of their own. */
    void writeNotes(Sheet sheet) {
        notes(sheet, Texts.FIELD_NOTES, rows().filter(row -> row.kind() == Kind.NOTE));
    }

    /** Writes field notes, those whose fix held first and those that were not it last. */
    void notes(Sheet sheet, String title, Stream<Row> notes) {
        sheet.bullets(2, title, items(notes.toList()));
    }

    private Stream<Row> rows() {
        return scope.path().stream().flatMap(scope.library().catalogue()::referringTo);
    }

    private void list(Sheet sheet, Kind kind, List<Row> rows) {
        sheet.bullets(3, Labels.capital(Labels.plural(kind)) + " (" + rows.size() + ")", items(rows));
    }

    private List<List<Span>> items(List<Row> rows) {
        var shown = rows.stream().sorted(ORDER).limit(SHOWN).map(this::item);
        var more = rows.size() > SHOWN ? Stream.of(Spans.of("and " + (rows.size() - SHOWN) + " more"))
                : Stream.<List<Span>>empty();
        return Stream.concat(shown, more).toList();
    }

    private List<Span> item(Row row) {
        var status = row.kind() == Kind.NOTE ? Labels.of(NoteStatus.get(row.status())) : "";
        return Spans.join(", ", List.of(List.of(scope.links().to(row)), Spans.of(status),
                Spans.of(row.date().map(LocalDate::toString).orElse(""))));
    }
}
