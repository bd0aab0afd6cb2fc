// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KindTest {

    @ParameterizedTest
    @CsvSource({
        "PART, shim-kit, parts/shim-kit.xmi",
        "NOTE, note-2024-wont-learn-k3f9, notes/2024/note-2024-wont-learn-k3f9.xmi",
        "JOB, job-2025-lorry-x2y3, jobs/2025/job-2025-lorry-x2y3.xmi",
        "SHOP, shop, shop.xmi",
        "GLOSSARY, glossary, glossary.xmi"})
    void aPathFollowsFromKindAndId(Kind kind, String id, String path) {
        assertEquals(path, kind.path(id));
    }

    @ParameterizedTest
    @CsvSource({"NOTE, shim-kit", "NOTE, job-2024-x-aaaa", "JOB, job-24-x", "SHOP, our-shop", "PART, Part"})
    void anIdThatCannotBeOfThatKindIsRefused(Kind kind, String id) {
        assertThrows(IllegalArgumentException.class, () -> kind.path(id));
    }

    @Test
    void everyConcreteTopElementHasAKind() {
        var classes = BookPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance)
                .map(EClass.class::cast).filter(type -> !type.isAbstract())
                .filter(BookPackage.Literals.TOP_ELEMENT::isSuperTypeOf).collect(Collectors.toSet());
        assertEquals(classes, Arrays.stream(Kind.values()).map(Kind::type).collect(Collectors.toSet()));
    }

    @Test
    void aKindIsFoundByItsWordOrFolder() {
        assertEquals(Optional.of(Kind.NOTE), Kind.of("note"));
        assertEquals(Optional.of(Kind.NOTE), Kind.of("Notes"));
        assertTrue(Kind.of("recipe").isEmpty());
    }
}
