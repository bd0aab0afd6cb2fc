// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackRegisterTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @TempDir
    Path library;

    private PackRegister register() {
        return PackRegister.in(library);
    }

    @Test
    void libraryWithoutPacksCarriesNothing() {
        assertEquals(List.of(), register().carrying("renew-filter"));
    }

    @Test
    void packsAreFoundByTheProcedureTheyCarryOldestFirst() throws Exception {
        var first = new PackEntry(DAY, "For Ines", "/stick/one", List.of("renew-filter@3", "read-codes"));
        var second = new PackEntry(DAY.plusDays(1), "For Wim", "/stick/two", List.of("renew-filter"));
        register().record(first);
        register().record(second);
        assertEquals(List.of(first, second), register().carrying("renew-filter"));
        assertEquals(List.of(first), register().carrying("read-codes"));
    }

    @Test
    void beginningOfAnIdIsNotTheId() throws Exception {
        register().record(new PackEntry(DAY, "For Ines", "out", List.of("renew-filter-2@1")));
        assertEquals(List.of(), register().carrying("renew-filter"));
    }

    @Test
    void revisionIsKeptBesideTheId() throws Exception {
        register().record(new PackEntry(DAY, "For Ines", "out", List.of("renew-filter@3", "read-codes")));
        var entry = register().carrying("read-codes").get(0);
        assertEquals(Optional.of("3"), entry.revision("renew-filter"));
        assertEquals(Optional.empty(), entry.revision("read-codes"));
    }

    @Test
    void tabsAndLinesInATitleDoNotBreakTheFile() throws Exception {
        register().record(new PackEntry(DAY, "For\tInes\nand Wim", "out\there", List.of("a")));
        assertEquals(List.of(new PackEntry(DAY, "For Ines and Wim", "out here", List.of("a"))), register().carrying("a"));
    }

    @Test
    void linesThatCannotBeReadArePassedOver() throws Exception {
        var file = library.resolve(".benchlore/packs.tsv");
        Files.createDirectories(file.getParent());
        Files.writeString(file, "soon\tFor Ines\tout\ta\nFor Wim\n2026-11-25\tFor Tamsin\tout\ta\n");
        assertEquals(List.of("For Tamsin"), register().carrying("a").stream().map(PackEntry::title).toList());
    }
}
