// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.JobState;
import org.benchlore.model.Kind;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.Status;
import org.benchlore.page.Labels;
import org.benchlore.search.Facet;
import org.benchlore.store.Row;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.emf.common.util.Enumerator;

/** Facts of a row in words, as they stand on one line of a list. */
final class RowWords {

    private RowWords() {
    }

    /** Returns the status in words, empty where there is none. */
    static String status(Row row) {
        if (row.status().equals(NoteStatus.SUPERSEDED.getLiteral())) {
            return Labels.of(NoteStatus.SUPERSEDED);
        }
        Enumerator literal = switch (row.kind()) {
            case NOTE -> NoteStatus.getByName(row.status());
            case PROCEDURE -> Status.getByName(row.status());
            case JOB -> JobState.getByName(row.status());
            default -> null;
        };
        return literal == null || literal == JobState.NOT_RECORDED ? "" : Labels.of(literal);
    }

    /** Returns the literal of any kind's status for what somebody typed: its word or the literal itself. */
    static Optional<String> statusOf(String typed) {
        return statuses().filter(status -> Labels.of(status).equalsIgnoreCase(typed.strip())
                || status.getLiteral().equalsIgnoreCase(typed.strip())).map(Enumerator::getLiteral).findFirst();
    }

    /** Returns every status as a person may type it. */
    static String statusWords() {
        return statuses().map(status -> status.getLiteral().toLowerCase(Locale.ROOT)).distinct()
                .collect(Collectors.joining(", "));
    }

    private static Stream<Enumerator> statuses() {
        return Stream.<List<? extends Enumerator>>of(NoteStatus.VALUES, Status.VALUES, JobState.VALUES)
                .flatMap(List::stream);
    }

    /** Returns in words what hits can be narrowed to. */
    static String value(OpenLibrary open, Facet facet, String value) {
        return switch (facet) {
            case KIND -> Kind.of(value).map(Labels::of).orElse(value);
            case MACHINE -> open.library().catalogue().byId(value).map(Row::title).orElse(value);
            case STATUS -> Stream.<Enumerator>of(NoteStatus.getByName(value), Status.getByName(value),
                    JobState.getByName(value)).filter(Objects::nonNull).findFirst().map(Labels::of).orElse(value);
            case SYSTEM, YEAR -> value;
        };
    }

    /** Returns the titles of the machines it is about, itself left out. */
    static String machines(OpenLibrary open, Row row) {
        return row.machines().stream().filter(machine -> !machine.equals(row.address()))
                .map(machine -> open.library().catalogue().at(machine).map(Row::title).orElse(machine.id()))
                .distinct().collect(Collectors.joining(", "));
    }
}
