// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.stream.Collectors;

import org.benchlore.store.Row;
import org.benchlore.workshop.OpenLibrary;

/** Facts of a row in words. */
final class Labels {

    private Labels() {
    }

    static String status(Row row) {
        return row.status().equals("NOT_RECORDED") ? "" : row.status().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    static String machines(OpenLibrary open, Row row) {
        return row.machines().stream().filter(machine -> !machine.equals(row.address()))
                .map(machine -> open.library().catalogue().at(machine).map(Row::title).orElse(machine.id()))
                .distinct().collect(Collectors.joining(", "));
    }
}
