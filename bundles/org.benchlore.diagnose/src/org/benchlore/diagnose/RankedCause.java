// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.List;

import org.benchlore.model.Address;

/**
 * A cause with all that speaks for it.
 *
 * @param address the cause; the component where no way of failing is recorded
 * @param title what it is called
 * @param component where it sits
 * @param critical whether its failure can hurt somebody
 * @param chance how likely it is now, whatever else is there
 * @param low the same with the least that the counts allow
 * @param high the same with the most
 * @param counted how often it was met
 * @param moves what moved it, the strongest first
 * @param witnesses notes, jobs, documents and the book, the strongest first
 * @param broughtAboutBy causes that bring it about: what killed it
 * @param spoils components and causes that it may bring about: what it killed
 * @param proof how it is proved, in words, or empty
 * @param cures procedures that are done about it, the nearest first
 */
public record RankedCause(Address address, String title, Named component, boolean critical, double chance, double low,
        double high, Counted counted, List<Move> moves, List<Witness> witnesses, List<Named> broughtAboutBy,
        List<Named> spoils, String proof, List<Named> cures) {
}
