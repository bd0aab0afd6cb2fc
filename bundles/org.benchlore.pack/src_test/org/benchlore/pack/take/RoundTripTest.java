// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.take;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.benchlore.check.Checker;
import org.benchlore.model.Part;
import org.benchlore.model.Procedure;
import org.benchlore.pack.Extra;
import org.benchlore.pack.PackException;
import org.benchlore.pack.PackRequest;
import org.benchlore.pack.Shops;
import org.benchlore.pack.take.Taking.Conflicts;
import org.benchlore.pack.zip.PackFile;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundTripTest {

    private static final String ACTUATOR = "procedures/renew-pto-actuator.xmi";

    @TempDir
    Path scratch;

    private Shops shops;
    private Library origin;

    @BeforeEach
    void open() {
        shops = new Shops(scratch);
        origin = shops.demonstration("origin");
    }

    private Path pack(String name, Library library, PackRequest request) {
        var out = scratch.resolve(name);
        shops.pack(library, request, out);
        return out;
    }

    private static Preview preview(Library library, Path pack) throws Exception {
        try (var file = PackFile.open(pack, new NullProgressMonitor())) {
            return new Taking(library).preview(file, new NullProgressMonitor());
        }
    }

    private static Preview take(Library library, Path pack, Conflicts conflicts) throws Exception {
        try (var file = PackFile.open(pack, new NullProgressMonitor())) {
            return new Taking(library).take(file, conflicts, new NullProgressMonitor());
        }
    }

    private static Map<Verdict, Long> counts(Preview preview) {
        return preview.items().stream().collect(Collectors.groupingBy(Item::verdict, Collectors.counting()));
    }

    private static Verdict verdict(Preview preview, String path) {
        return preview.items().stream().filter(item -> item.path().equals(path)).findFirst().orElseThrow().verdict();
    }

    @Test
    void whatAnEmptyLibraryTookIsFreeOfProblemsThatThePackBrought() throws Exception {
        var taker = shops.empty("taker");
        take(taker, pack("a.zip", origin, Shops.whole()), Conflicts.REFUSE);
        var silenced = new Checker(origin, () -> Shops.DAY).all(new NullProgressMonitor()).silenced().stream()
                .map(one -> one.problem().rule() + " " + one.problem().at()).toList();
        var problems = new Checker(taker, () -> Shops.DAY).all(new NullProgressMonitor()).open().stream()
                // The shop itself is the taker's own: nobody in it is qualified yet, and nothing is silenced.
                .filter(problem -> !problem.rule().equals("nobody-qualified"))
                .map(problem -> problem.rule() + " " + problem.at()).filter(line -> !silenced.contains(line)).toList();
        assertEquals(List.of(), problems);
    }

    @Test
    void packedAgainItHasTheSameSums() throws Exception {
        var taker = shops.empty("taker");
        var first = shops.pack(origin, Shops.whole(), scratch.resolve("a.zip"));
        take(taker, scratch.resolve("a.zip"), Conflicts.REFUSE);
        var second = shops.pack(taker, Shops.whole(), scratch.resolve("b.zip"));
        assertEquals(first.files(), second.files());
    }

    @Test
    void theSameContentsGiveTheSameBytes() throws Exception {
        assertEquals(-1, Files.mismatch(pack("a.zip", origin, Shops.whole()), pack("b.zip", origin, Shops.whole())));
    }

    @Test
    void itsOwnPackIsTheSameToTheShopThatMadeIt() throws Exception {
        assertEquals(List.of(Verdict.SAME), List.copyOf(counts(preview(origin, pack("a.zip", origin, Shops.whole()))).keySet()));
    }

    @Test
    void aPreviewChangesNothing() throws Exception {
        var taker = shops.empty("taker");
        var before = Shops.sums(taker.root());
        preview(taker, pack("a.zip", origin, Shops.whole()));
        assertEquals(before, Shops.sums(taker.root()));
    }

    @Test
    void takenBackTheLibraryIsAsItWas() throws Exception {
        var taker = shops.empty("taker");
        var before = Shops.sums(taker.root());
        take(taker, pack("a.zip", origin, Shops.whole()), Conflicts.REFUSE);
        new Taking(taker).back();
        assertEquals(before, Shops.sums(taker.root()));
    }

    @Test
    void whatWasChangedSinceIsNotTakenBack() throws Exception {
        var taker = shops.empty("taker");
        take(taker, pack("a.zip", origin, Shops.whole()), Conflicts.REFUSE);
        Shops.replace(taker, ACTUATOR, "Twenty minutes", "Thirty minutes");
        var before = Shops.sums(taker.root());
        assertThrows(PackException.class, () -> new Taking(taker).back());
        assertEquals(before, Shops.sums(taker.root()));
    }

    @Test
    void aLaterPackChangesWhatNobodyTouched() throws Exception {
        var taker = shops.empty("taker");
        take(taker, pack("a.zip", origin, Shops.whole()), Conflicts.REFUSE);
        Shops.replace(origin, ACTUATOR, "revision=\"3\"", "revision=\"4\"");
        Shops.replace(origin, ACTUATOR, "Twenty minutes", "Thirty minutes");
        var preview = take(taker, pack("b.zip", origin, Shops.whole()), Conflicts.REFUSE);
        assertEquals(Verdict.CHANGED, verdict(preview, ACTUATOR));
        assertTrue(((Procedure) taker.top("renew-pto-actuator").orElseThrow()).getSummary().startsWith("Thirty"));
    }

    @Test
    void anEarlierRevisionIsOlderAndStaysOut() throws Exception {
        var taker = shops.empty("taker");
        var earlier = pack("a.zip", origin, Shops.whole());
        Shops.replace(origin, ACTUATOR, "revision=\"3\"", "revision=\"4\"");
        take(taker, pack("b.zip", origin, Shops.whole()), Conflicts.REFUSE);
        assertEquals(Verdict.OLDER, verdict(take(taker, earlier, Conflicts.REFUSE), ACTUATOR));
        assertEquals(4, ((Procedure) taker.top("renew-pto-actuator").orElseThrow()).getRevision());
    }

    @Test
    void whatBothChangedIsAConflictAndNothingIsTaken() throws Exception {
        var taker = shops.empty("taker");
        take(taker, pack("a.zip", origin, PackRequest.of("renew-pto-actuator")), Conflicts.REFUSE);
        Shops.replace(taker, ACTUATOR, "Twenty minutes", "Forty minutes");
        Shops.replace(origin, ACTUATOR, "Twenty minutes", "Thirty minutes");
        var before = Shops.sums(taker.root());
        var later = pack("b.zip", origin, Shops.whole());
        assertThrows(PackException.class, () -> take(taker, later, Conflicts.REFUSE));
        assertEquals(before, Shops.sums(taker.root()));
    }

    @Test
    void withAnAnswerTheConflictKeepsTheOwn() throws Exception {
        var taker = shops.empty("taker");
        take(taker, pack("a.zip", origin, PackRequest.of("renew-pto-actuator")), Conflicts.REFUSE);
        Shops.replace(taker, ACTUATOR, "Twenty minutes", "Forty minutes");
        Shops.replace(origin, ACTUATOR, "Twenty minutes", "Thirty minutes");
        take(taker, pack("b.zip", origin, Shops.whole()), Conflicts.KEEP_OWN);
        assertTrue(((Procedure) taker.top("renew-pto-actuator").orElseThrow()).getSummary().startsWith("Forty"));
    }

    @Test
    void withAnAnswerTheConflictTakesThePacks() throws Exception {
        var taker = shops.empty("taker");
        take(taker, pack("a.zip", origin, PackRequest.of("renew-pto-actuator")), Conflicts.REFUSE);
        Shops.replace(taker, ACTUATOR, "Twenty minutes", "Forty minutes");
        Shops.replace(origin, ACTUATOR, "Twenty minutes", "Thirty minutes");
        take(taker, pack("b.zip", origin, Shops.whole()), Conflicts.TAKE_THEIRS);
        assertTrue(((Procedure) taker.top("renew-pto-actuator").orElseThrow()).getSummary().startsWith("Thirty"));
    }

    @Test
    void pricesOfTheTakerStayWhereThePackCarriesNone() throws Exception {
        var taker = shops.demonstration("taker");
        Shops.replace(origin, "parts/pto-actuator.xmi", "title=\"", "title=\"New: ");
        take(taker, pack("a.zip", origin, Shops.whole()), Conflicts.TAKE_THEIRS);
        var part = (Part) taker.top("pto-actuator").orElseThrow();
        assertTrue(part.getTitle().startsWith("New: ") && part.getPrice() != null, part.toString());
    }

    @Test
    void namesComeIntoTheShopOnlyWhereTheyWereChosen() throws Exception {
        var taker = shops.empty("taker");
        take(taker, pack("a.zip", origin, Shops.whole(Extra.NAMES)), Conflicts.REFUSE);
        var shop = (org.benchlore.model.Shop) taker.top("shop").orElseThrow();
        assertEquals("Shop taker", shop.getTitle());
        assertTrue(shop.getPeople().stream().anyMatch(person -> person.getTitle().equals("Oda Brekkan")));
    }
}
