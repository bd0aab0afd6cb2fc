// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.benchlore.evidence.decide.Option;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AdviceTest {

    @ParameterizedTest
    @CsvSource({"RENEW,' it is dear ','Seal: renew it now, because it is dear.'", "LEAVE,'','Seal: leave it.'", ",it is dear,''"})
    void nothingIsAdvisedUntilAPersonHasChosen(Option way, String because, String line) {
        assertEquals(line, new Advice(Optional.ofNullable(way), because).line("Seal"));
    }
}
