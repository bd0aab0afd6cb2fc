// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;

/** The demonstration library keeps the rules that it shows. */
class DemonstrationTest {

    private final Report report = new Checker(Demo.LIBRARY, () -> Mirror.DAY).all(new NullProgressMonitor());

    @Test
    void itHasNoErrorAndNoWarningThatNobodyExplained() {
        assertEquals("", String.join("\n", report.open().stream()
                .map(problem -> problem.rule() + " at " + problem.at() + ": " + problem.sentence()).toList()));
    }

    @Test
    void whatIsSilencedIsAWarningWithItsReason() {
        assertEquals(1, report.silenced().size());
        report.silenced().forEach(one -> {
            assertEquals(Severity.WARNING, one.problem().severity());
            assertTrue(one.reason().length() > 20, one.reason());
        });
    }
}
