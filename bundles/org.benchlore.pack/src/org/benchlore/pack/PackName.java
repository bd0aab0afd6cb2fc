// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/** What a pack is called that nobody gave a name: after what was chosen, not after what happens to stand first in it. */
final class PackName {

    private static final int MOST = 3;

    private final Library library;
    private final PackRequest request;

    PackName(Library library, PackRequest request) {
        this.library = library;
        this.request = request;
    }

    /**
     * Names a pack.
     *
     * @param procedures the procedures that go in, of those that were wanted
     * @return the name that was given; else the shop's for a whole library, the machines and systems chosen, or the procedures
     */
    String of(List<Row> procedures) {
        if (!request.title().isBlank()) {
            return request.title();
        }
        if (request.isWhole()) {
            return library.catalogue().rows(Kind.SHOP).map(Row::title).findFirst().orElse("All procedures");
        }
        return request.procedures().isEmpty() ? joined(chosen().toList()) : joined(procedures.stream().map(Row::title).toList());
    }

    private Stream<String> chosen() {
        var machines = request.machines().stream().map(id -> library.catalogue().byId(id).map(Row::title).orElse(id));
        return Stream.concat(machines, request.systems().stream());
    }

    private static String joined(List<String> names) {
        if (names.isEmpty()) {
            return "Procedures";
        }
        return names.size() <= MOST ? list(names) : names.get(0) + " and " + (names.size() - 1) + " more";
    }

    private static String list(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : names.stream().limit(last).collect(Collectors.joining(", ")) + " and " + names.get(last);
    }
}
