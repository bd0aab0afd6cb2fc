// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.benchlore.model.Address;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PageHistoryTest {

    private static final Address NOTE = new Address("notes/a.xmi", "a");
    private static final Address PART = new Address("parts/b.xmi", "b");
    private static final Address TOOL = new Address("tools/c.xmi", "c");

    private final PageHistory history = new PageHistory();

    @BeforeEach
    void read() {
        history.visit(NOTE);
        history.visit(PART);
    }

    @Test
    void backLeadsToWhatWasReadBefore() {
        assertEquals(Optional.of(NOTE), history.back());
        assertEquals(Optional.empty(), history.back());
    }

    @Test
    void forwardLeadsOnAfterBack() {
        history.visit(history.back().orElseThrow());
        assertEquals(Optional.of(PART), history.forward());
        assertEquals(Optional.empty(), history.forward());
    }

    @Test
    void readingSomethingElseForgetsWhatWasAhead() {
        history.back();
        history.visit(TOOL);
        assertEquals(Optional.empty(), history.forward());
        assertEquals(Optional.of(NOTE), history.back());
    }

    @Test
    void readingOnInTheSamePageIsNoStep() {
        history.visit(PART);
        assertEquals(Optional.of(NOTE), history.back());
    }

    @Test
    void anotherLibraryBeginsWithNothing() {
        history.clear();
        assertEquals(Optional.empty(), history.back());
    }

    @Test
    void oldestStepsMakeRoom() {
        for (int i = 0; i < 250; i++) {
            history.visit(i % 2 == 0 ? TOOL : NOTE);
        }
        int steps = 0;
        while (history.back().isPresent()) {
            steps++;
        }
        assertEquals(99, steps);
    }
}
