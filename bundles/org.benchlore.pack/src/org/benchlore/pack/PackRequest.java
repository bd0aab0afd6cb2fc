// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.List;
import java.util.Set;

import org.benchlore.model.ProcedureKind;

/**
 * What is wanted in a pack. Procedures named by id are always meant; machines and systems add all of theirs; where none
 * of the three is named, the whole library is meant.
 *
 * @param title what people call the pack; empty for one made from its contents
 * @param procedures ids of procedures
 * @param machines ids of machines
 * @param systems names or ids of the uppermost components of machines
 * @param kinds only these kinds of procedures; empty for all
 * @param drafts whether drafts and notes that nobody proved come along, marked
 * @param withdrawn whether withdrawn procedures come along, marked
 * @param extras what comes along though it stays out otherwise
 */
public record PackRequest(String title, List<String> procedures, List<String> machines, List<String> systems,
        Set<ProcedureKind> kinds, boolean drafts, boolean withdrawn, Set<Extra> extras) {

    /** Copies the lists. */
    public PackRequest {
        procedures = List.copyOf(procedures);
        machines = List.copyOf(machines);
        systems = List.copyOf(systems);
        kinds = Set.copyOf(kinds);
        extras = Set.copyOf(extras);
    }

    /**
     * Returns a request for some procedures and nothing that stays out otherwise.
     *
     * @param procedures ids of procedures
     * @return the request
     */
    public static PackRequest of(String... procedures) {
        return new PackRequest("", List.of(procedures), List.of(), List.of(), Set.of(), false, false, Set.of());
    }

    /**
     * Tells whether something comes along.
     *
     * @param extra what stays out otherwise
     * @return true if it was chosen
     */
    public boolean has(Extra extra) {
        return extras.contains(extra);
    }

    boolean isWhole() {
        return procedures.isEmpty() && machines.isEmpty() && systems.isEmpty();
    }
}
