// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

class RulesDocumentTest {

    /** To mend it, run 'releng/benchlore check --rules' and write what it prints into docs/rules.md. */
    @Test
    void thePageIsWhatTheRulesSay() throws Exception {
        var page = Files.readString(Path.of(System.getProperty("benchlore.root"), "docs/rules.md"));
        assertEquals(RulesDocument.of(new Checker(Demo.LIBRARY, () -> Mirror.DAY).rules()), page);
    }
}
