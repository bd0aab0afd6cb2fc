// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.List;
import java.util.Set;
import java.util.SortedMap;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Row;

/**
 * What goes into a pack and what does not.
 *
 * @param request what was wanted
 * @param title what people call the pack
 * @param rows facts of every file that comes along, by path; without the shop
 * @param people addresses of the people whose names come along
 * @param leftOut what is spoken of and stays out, in order
 */
public record Selection(PackRequest request, String title, SortedMap<String, Row> rows, Set<Address> people,
        List<LeftOut> leftOut) {

    /**
     * Returns the files of one kind that come along.
     *
     * @param kind a kind
     * @return their facts, by path
     */
    public List<Row> rows(Kind kind) {
        return rows.values().stream().filter(row -> row.kind() == kind).toList();
    }

    /**
     * Returns the procedures that come along.
     *
     * @return their ids, by path
     */
    public List<String> procedures() {
        return rows(Kind.PROCEDURE).stream().map(Row::id).toList();
    }

    /** Tells whether an element comes along. */
    boolean has(Address address) {
        return rows.containsKey(address.path()) || people.contains(address);
    }
}
