// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;

import org.benchlore.model.BookPackage;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.Qualification;
import org.benchlore.model.Signal;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Literals in words. */
class LabelsTest {

    static Stream<EEnum> everyEnumeration() {
        return ((EPackage) BookPackage.eINSTANCE).getEClassifiers().stream().filter(EEnum.class::isInstance)
                .map(EEnum.class::cast);
    }

    @ParameterizedTest
    @MethodSource("everyEnumeration")
    void everyLiteralHasWordsOfItsOwn(EEnum type) {
        var words = new HashSet<String>();
        for (var literal : type.getELiterals()) {
            Enumerator instance = literal.getInstance();
            assertTrue(literal.getLiteral().equals("NOT_RECORDED") || WorkWords.WORDS.containsKey(instance)
                    || RecordWords.WORDS.containsKey(instance) || WeightWords.WORDS.containsKey(instance),
                    type.getName() + "." + literal.getLiteral());
            assertTrue(words.add(Labels.of(instance)), type.getName() + "." + literal.getLiteral());
        }
    }

    @ParameterizedTest
    @CsvSource({"UNSORTED,not sorted yet", "SUSPECTED,suspected", "SEEN,seen to happen", "HELD,the fix held",
        "RULED_OUT,'looked like this, was not'", "SUPERSEDED,superseded"})
    void aNotesStatusSaysHowFarItIsProved(NoteStatus status, String words) {
        assertEquals(words, Labels.of(status));
    }

    @Test
    void whatWasNotRecordedIsNotTheSameAsNone() {
        assertEquals("not recorded", Labels.of(Qualification.NOT_RECORDED));
        assertEquals("none", Labels.of(Qualification.NONE));
        assertEquals("not recorded", Labels.of(List.<Qualification>of()));
    }

    @Test
    void aHazardWithoutASignalWordIsStillAHazard() {
        assertEquals("HAZARD", Labels.signal(Signal.NOT_RECORDED));
    }
}
