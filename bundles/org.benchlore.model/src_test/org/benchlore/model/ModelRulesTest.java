// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules of design that hold for the whole model. */
class ModelRulesTest {

    private static final Set<String> SAFE = Set.of("NOT_RECORDED", "DRAFT", "UNSORTED", "DO", "ALWAYS", "OFFERED");

    private static Stream<EClass> classes() {
        return BookPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast);
    }

    private static Stream<EReference> references() {
        return classes().flatMap(type -> type.getEReferences().stream());
    }

    @Test
    void noReferenceResolvesByItselfOrHasAnOpposite() {
        references().forEach(reference -> {
            assertFalse(reference.isResolveProxies(), reference.getName());
            assertNull(reference.getEOpposite(), reference.getName());
        });
    }

    @Test
    void nothingIsContainedAcrossFiles() {
        references().filter(EReference::isContainment).forEach(reference ->
                assertFalse(BookPackage.Literals.TOP_ELEMENT.isSuperTypeOf(reference.getEReferenceType()),
                        reference.getName()));
    }

    @Test
    void whatIsReferredToHasAnId() {
        references().filter(reference -> !reference.isContainment()).forEach(reference ->
                assertTrue(BookPackage.Literals.ELEMENT.isSuperTypeOf(reference.getEReferenceType()),
                        reference.getName()));
    }

    /** The list stands in the design: every element that is referenced or merged. */
    @ParameterizedTest
    @ValueSource(strings = {"Step", "Fastening", "Measurement", "Outcome", "Hazard", "PartUse", "ToolUse", "SupplyUse",
        "Component", "Access", "Cause", "GlossaryEntry", "Way", "Work", "Person", "Site", "Round"})
    void whatIsMergedHasAnId(String name) {
        var type = (EClass) BookPackage.eINSTANCE.getEClassifier(name);
        assertTrue(BookPackage.Literals.ELEMENT.isSuperTypeOf(type));
    }

    @Test
    void theFirstLiteralIsTheSafeDefault() {
        BookPackage.eINSTANCE.getEClassifiers().stream().filter(EEnum.class::isInstance).map(EEnum.class::cast)
                .forEach(type -> assertTrue(SAFE.contains(type.getELiterals().get(0).getName()), type.getName()));
    }

    /** The generated package leaves documentation out, so the Ecore itself is read. */
    @ParameterizedTest
    @ValueSource(strings = {"eClassifiers", "eStructuralFeatures"})
    void everythingIsDocumented(String tag) throws Exception {
        var file = Path.of(System.getProperty("benchlore.root"), "bundles/org.benchlore.model/model/book.ecore");
        var nodes = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile())
                .getElementsByTagName(tag);
        assertTrue(nodes.getLength() > 50);
        for (int i = 0; i < nodes.getLength(); i++) {
            var element = (org.w3c.dom.Element) nodes.item(i);
            var detail = (org.w3c.dom.Element) element.getElementsByTagName("details").item(0);
            assertEquals("documentation", detail.getAttribute("key"), element.getAttribute("name"));
            assertTrue(detail.getAttribute("value").length() > 1, element.getAttribute("name"));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Torque | 45 N·m", "Torque | 33 ft-lb", "Angle | 90 °", "Length | 30 km", "Duration | 1.5 h",
        "Duration | PT1H30M", "Measure | 18.5 bar", "Money | 148.50", "Date | 2026-11-25", "Year | 2019", "Count | 4",
        "Factor | 19.5", "Id | shim-kit"})
    void valuesKeepTheTextAsEntered(String type, String text) {
        var data = (EDataType) BookPackage.eINSTANCE.getEClassifier(type);
        assertEquals(text, EcoreUtil.convertToString(data, EcoreUtil.createFromString(data, text)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Torque | 45", "Torque | 45 mm", "Torque | -45 N·m", "Torque | 4x5 N·m", "Torque | N·m", "Angle | 90 N·m",
        "Length | 30 h", "Duration | 3 km", "Duration | -3 min", "Measure | 18.5 furlongs", "Measure | 1e999 bar",
        "Money | -1", "Money | 1.2.3", "Money | 12 EUR", "Id | Shim"})
    void nonsenseIsRejected(String type, String text) {
        var data = (EDataType) BookPackage.eINSTANCE.getEClassifier(type);
        assertThrows(IllegalArgumentException.class, () -> EcoreUtil.createFromString(data, text));
    }
}
