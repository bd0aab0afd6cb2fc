// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.model.ProcedureKind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SelectorTest {

    @TempDir
    Path scratch;

    private Library library;

    @BeforeEach
    void open() {
        library = new Shops(scratch).demonstration("shop");
    }

    private Selection of(PackRequest request) throws PackException {
        return Selector.of(library, request);
    }

    private String everything(PackRequest request) throws Exception {
        var text = new StringBuilder();
        try (var packed = PackedLibrary.of(library, of(request), new NullProgressMonitor())) {
            for (var path : packed.paths()) {
                text.append(path).append('\n').append(new String(packed.bytes(path), StandardCharsets.UTF_8));
            }
        }
        return text.toString();
    }

    @Test
    void whatAProcedureStandsOnComesAlong() throws Exception {
        var selection = of(PackRequest.of("renew-pto-actuator"));
        assertTrue(selection.procedures().containsAll(List.of("renew-pto-actuator", "save-pto-values", "bleed-pto-engagement-circuit",
                "teach-in-pto-engagement", "leak-check-pto", "read-codes")));
        assertTrue(selection.rows().containsKey("machines/dravholm-hl26.xmi"));
        assertTrue(selection.rows().containsKey("parts/pto-actuator.xmi"));
    }

    @Test
    void whatTheShopKnowsAboutItComesAlong() throws Exception {
        assertTrue(of(PackRequest.of("renew-pto-actuator")).rows(Kind.NOTE).stream().map(Row::id)
                .anyMatch("note-2025-learning-fails-on-a-fresh-install-k7m3"::equals));
    }

    @Test
    void anotherMachineStaysOut() throws Exception {
        assertFalse(of(PackRequest.of("renew-pto-actuator")).rows().containsKey("machines/quillfen-s6.xmi"));
    }

    @Test
    void everyReferenceOfAPackedFileLeadsIntoThePack() throws Exception {
        try (var packed = PackedLibrary.of(library, of(PackRequest.of("renew-pto-actuator")), new NullProgressMonitor());
                var inside = new Shops(scratch).open(packed.folder())) {
            assertEquals(List.of(), inside.problems());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"HL262988", "Oda Brekkan", "Jory", "jory-pask", "lorry-17", "Lorry 17", "price=", "shop.xmi", "job-2025",
        "keptAt=", "units/"})
    void whatIsPrivateIsNowhereInThePack(String word) throws Exception {
        assertFalse(everything(Shops.whole()).contains(word), word);
    }

    @ParameterizedTest
    @ValueSource(strings = {"HL262988", "Oda Brekkan", "price=", "jobs/2025/job-2025-clutch-pack-lorry-17-w4t9.xmi"})
    void whatIsPrivateComesAlongWhereItWasChosen(String word) throws Exception {
        assertTrue(everything(Shops.whole(Extra.values())).contains(word), word);
    }

    @Test
    void whatIsPrivateIsCountedAndNotNamed() throws Exception {
        var left = of(Shops.whole()).leftOut().stream().map(LeftOut::toString).toList();
        assertTrue(left.stream().anyMatch(line -> line.startsWith("job records (") && line.endsWith("stay out unless chosen")), left.toString());
        assertTrue(left.stream().noneMatch(line -> line.startsWith("job record '") || line.startsWith("unit '")), left.toString());
    }

    @Test
    void aDraftStaysOutAndIsNamed() throws Exception {
        Shops.replace(library, "procedures/leak-check-pto.xmi", "status=\"REVIEWED\"", "status=\"DRAFT\"");
        var selection = of(PackRequest.of("renew-pto-actuator"));
        assertFalse(selection.procedures().contains("leak-check-pto"));
        assertTrue(selection.leftOut().stream().anyMatch(left -> left.what().contains("leak-check-pto") && left.reason().equals("is a draft")));
    }

    @Test
    void workThatIsNeededAndStaysOutIsWrittenIntoTheProcedure() throws Exception {
        Shops.replace(library, "procedures/leak-check-pto.xmi", "status=\"REVIEWED\"", "status=\"DRAFT\"");
        assertTrue(everything(PackRequest.of("renew-pto-actuator")).contains("It is needed and not in this pack"));
    }

    @Test
    void draftsComeAlongWhereTheyAreAskedFor() throws Exception {
        Shops.replace(library, "procedures/leak-check-pto.xmi", "status=\"REVIEWED\"", "status=\"DRAFT\"");
        assertTrue(of(new PackRequest("", List.of("renew-pto-actuator"), List.of(), List.of(), Set.of(), true, false, Set.of()))
                .procedures().contains("leak-check-pto"));
    }

    @Test
    void onlyADraftLeavesNothingToPack() {
        Shops.replace(library, "procedures/leak-check-pto.xmi", "status=\"REVIEWED\"", "status=\"DRAFT\"");
        var refused = assertThrows(PackException.class, () -> of(PackRequest.of("leak-check-pto")));
        assertEquals("Nothing is left to pack: 'leak-check-pto' is a draft.", refused.getMessage());
    }

    @Test
    void aPackThatNobodyNamedIsCalledAfterWhatWasChosen() throws Exception {
        assertEquals("Dravholm HL 26 hook-lift lorry", name(List.of(), List.of("dravholm-hl26")));
        assertEquals("Dravholm HL 26 hook-lift lorry and Quillfen S6 street sweeper", name(List.of(), List.of("dravholm-hl26", "quillfen-s6")));
        assertEquals("Grelmouth Harbour Fleet Workshop", name(List.of(), List.of()));
        assertEquals(title("renew-pto-actuator"), name(List.of("renew-pto-actuator"), List.of()));
        assertEquals(title("renew-pto-actuator") + " and 3 more",
                name(List.of("renew-pto-actuator", "save-pto-values", "leak-check-pto", "read-codes"), List.of()));
    }

    private String name(List<String> procedures, List<String> machines) throws PackException {
        return of(new PackRequest("", procedures, machines, List.of(), Set.of(), false, false, Set.of())).title();
    }

    private String title(String id) {
        return library.catalogue().byId(id).orElseThrow().title();
    }

    @Test
    void anUnknownIdIsNamed() {
        assertTrue(assertThrows(PackException.class, () -> of(PackRequest.of("nothing-such"))).getMessage().contains("nothing-such"));
    }

    @Test
    void aKindNarrowsTheChoice() throws Exception {
        var request = new PackRequest("", List.of(), List.of("quillfen-s6"), List.of(), Set.of(ProcedureKind.TEST, ProcedureKind.INSPECT),
                false, false, Set.of());
        var wanted = new Wanted(library, request).rows().stream().map(Row::id).toList();
        assertTrue(wanted.contains("check-sweeper-fan-vibration") && !wanted.contains("renew-sweeper-fan-bearings"), wanted.toString());
    }

    @Test
    void aSystemChoosesAllOfItsComponents() throws Exception {
        var machine = (org.benchlore.model.Machine) library.top("dravholm-hl26").orElseThrow();
        var all = Stream.of(machine.getComponents().toArray(org.benchlore.model.Component[]::new)).map(org.benchlore.model.Component::getTitle)
                .filter(title -> title.toLowerCase().contains("take-off")).findFirst().orElseThrow();
        var request = new PackRequest("", List.of(), List.of(), List.of(all), Set.of(), false, false, Set.of());
        assertTrue(of(request).procedures().contains("renew-pto-actuator"));
    }

    @Test
    void theFormOfAFormIsItself() throws Exception {
        try (var packed = PackedLibrary.of(library, of(Shops.whole()), new NullProgressMonitor());
                var inside = new Shops(scratch).open(packed.folder());
                var again = PackedLibrary.of(inside, Selector.of(inside, Shops.whole()), new NullProgressMonitor())) {
            for (var path : packed.paths()) {
                assertEquals(Files.readString(packed.folder().resolve(path)), Files.readString(again.folder().resolve(path)), path);
            }
        }
    }
}
