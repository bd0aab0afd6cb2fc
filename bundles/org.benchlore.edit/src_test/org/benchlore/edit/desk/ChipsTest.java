// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.benchlore.edit.desk.Chips.Chip;
import org.benchlore.edit.desk.Proposal.What;
import org.junit.jupiter.api.Test;

class ChipsTest {

    private static final Proposal LEAK = new Proposal(What.SYMPTOM, "Leaks", Optional.empty());
    private static final Proposal NOISE = new Proposal(What.SYMPTOM, "Whines", Optional.empty());
    private static final Proposal SMELL = new Proposal(What.SYMPTOM, "Smells burnt", Optional.empty());

    private final Chips chips = new Chips();

    @Test
    void acceptingKeepsTheNumber() {
        chips.update(List.of(), List.of(LEAK, NOISE));
        assertEquals(List.of(new Chip(1, LEAK, false), new Chip(2, NOISE, true)),
                chips.update(List.of(NOISE), List.of(LEAK)));
    }

    @Test
    void theNumberOfOneThatWentIsGivenToTheNextThatComes() {
        chips.update(List.of(), List.of(LEAK, NOISE));
        chips.update(List.of(), List.of(NOISE));
        assertEquals(List.of(new Chip(1, SMELL, false), new Chip(2, NOISE, false)),
                chips.update(List.of(), List.of(NOISE, SMELL)));
    }

    @Test
    void aNumberLeadsToItsValue() {
        chips.update(List.of(LEAK), List.of(NOISE));
        assertEquals(Optional.of(NOISE), chips.at(2));
        assertEquals(Optional.empty(), chips.at(3));
    }
}
