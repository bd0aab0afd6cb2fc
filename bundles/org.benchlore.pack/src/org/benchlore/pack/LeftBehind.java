// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/** Names what is spoken of and stays out. Of private things only the number is told. */
final class LeftBehind {

    private static final Map<Kind, String> PRIVATE = Map.of(Kind.UNIT, "units", Kind.JOB, "job records");

    private final Library library;
    private final PackRequest request;
    private final Set<String> taken;
    private final Set<Address> people;
    private final Function<Row, String> reason;

    LeftBehind(Library library, PackRequest request, Set<String> taken, Set<Address> people, Function<Row, String> reason) {
        this.library = library;
        this.request = request;
        this.taken = taken;
        this.people = people;
        this.reason = reason;
    }

    List<LeftOut> list(Collection<Row> rows, Set<String> refused) {
        var left = new TreeSet<LeftOut>();
        var counts = new TreeMap<String, Set<Address>>();
        rows.forEach(row -> row.references().stream().filter(to -> !taken.contains(to.path()) && !people.contains(to))
                .forEach(to -> name(to, left, counts)));
        refused.forEach(path -> library.catalogue().entry(path).flatMap(entry -> entry.row())
                .filter(row -> !taken.contains(path)).ifPresent(row -> name(row.address(), left, counts)));
        counts.forEach((what, which) -> left.add(new LeftOut(what + " (" + which.size() + ")", "stay out unless chosen")));
        for (var extra : List.of(Extra.PRICES, Extra.CUSTOMERS)) {
            if (!request.has(extra)) {
                left.add(new LeftOut(extra.words(), "stay out unless chosen"));
            }
        }
        return new ArrayList<>(left);
    }

    private void name(Address to, Set<LeftOut> left, Map<String, Set<Address>> counts) {
        if (to.path().equals(Kind.SHOP.path(Kind.SHOP.word()))) {
            counts.computeIfAbsent("people of the shop", what -> new TreeSet<>()).add(to);
            return;
        }
        var found = library.catalogue().at(to);
        if (found.isEmpty()) {
            left.add(new LeftOut(to.id(), "is not in the library"));
            return;
        }
        var row = found.get();
        var word = PRIVATE.get(row.kind());
        if (word != null) {
            counts.computeIfAbsent(word, what -> new TreeSet<>()).add(row.address());
        } else {
            left.add(new LeftOut(row.kind().word() + " '" + row.title() + "' (" + row.id() + ")", reason.apply(row)));
        }
    }
}
