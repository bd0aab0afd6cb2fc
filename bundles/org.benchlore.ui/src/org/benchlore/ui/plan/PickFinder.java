// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.search.Titles;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;

/** Finds what can be picked by the beginnings of words of its title, by id, or by a fleet or serial number. */
final class PickFinder {

    private static final int MOST = 40;

    private PickFinder() {
    }

    /** Units and machines, units first: a job is done on a unit. */
    static List<Row> subjects(Catalogue catalogue, String typed) {
        return find(catalogue, typed, row -> Wanted.isSubject(row.kind()))
                .sorted(Comparator.comparing(row -> row.kind() != Kind.UNIT)).limit(MOST).toList();
    }

    /** Procedures, those for the picked machine and those for any before those for others. */
    static List<Row> work(Catalogue catalogue, String typed, String subject) {
        var machine = machine(catalogue, subject);
        return find(catalogue, typed, row -> row.kind() == Kind.PROCEDURE)
                .sorted(Comparator.comparing(row -> !isFor(row, machine))).limit(MOST).toList();
    }

    static boolean isFor(Row procedure, Optional<Address> machine) {
        return machine.isEmpty() || procedure.machines().isEmpty() || procedure.machines().contains(machine.get());
    }

    static Optional<Address> machine(Catalogue catalogue, String subject) {
        return catalogue.byId(subject).flatMap(row -> row.kind() == Kind.UNIT ? row.machines().stream().findFirst()
                : Optional.of(row.address()));
    }

    private static Stream<Row> find(Catalogue catalogue, String typed, Predicate<Row> kinds) {
        var wanted = typed.strip().toLowerCase(Locale.ROOT);
        var byNumber = wanted.isEmpty() ? Stream.<Row>empty() : catalogue.rows().filter(kinds)
                .filter(row -> row.numbers().stream().anyMatch(number -> number.toLowerCase(Locale.ROOT).contains(wanted)));
        return Stream.concat(Titles.find(catalogue, typed, Integer.MAX_VALUE).stream().filter(kinds), byNumber).distinct();
    }
}
