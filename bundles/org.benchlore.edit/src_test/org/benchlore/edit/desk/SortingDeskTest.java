// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.benchlore.edit.DemoCopy;
import org.benchlore.edit.desk.DeclinedWork.Why;
import org.benchlore.model.Kind;
import org.benchlore.store.Row;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What waits to be sorted, to be confirmed, and what was declined and failed. */
class SortingDeskTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    Path folder;

    private DemoCopy demo;

    @BeforeEach
    void open() {
        demo = new DemoCopy(folder);
    }

    private SortingDesk desk() {
        return new SortingDesk(demo.open());
    }

    private void put(String path, String xml) throws IOException {
        Files.writeString(demo.root().resolve(path), "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + xml.replace("%s", "xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\""
                        + " xmlns:book=\"urn:benchlore:book:1\" formatVersion=\"1\""));
    }

    private void note(String id, String attributes, String body) throws IOException {
        put("notes/2026/" + id + ".xmi", "<book:FieldNote %s id=\"" + id + "\" " + attributes + "><text>" + body
                + "</book:FieldNote>");
    }

    private static List<String> ids(List<Row> rows) {
        return rows.stream().map(Row::id).toList();
    }

    @Test
    void unsortedNotesComeOldestFirstAndThoseWithoutADateBefore() throws IOException {
        var already = desk().unsorted().size();
        note("note-2026-later-aaaa", "date=\"2026-10-02\"", "x</text>");
        note("note-2026-earlier-bbbb", "date=\"1999-10-01\"", "x</text>");
        note("note-2026-undated-cccc", "", "x</text>");
        var found = ids(desk().unsorted());
        assertEquals(already + 3, found.size());
        assertEquals(List.of("note-2026-undated-cccc", "note-2026-earlier-bbbb"), found.subList(0, 2));
    }

    @Test
    void aFixNobodyConfirmedIsListedOnceEnoughDaysHavePassed() {
        var filter = "note-2026-filter-black-after-burnt-pack-g8mq";
        assertTrue(ids(desk().toConfirm(TODAY, 90)).contains(filter));
        assertFalse(ids(desk().toConfirm(LocalDate.of(2026, 6, 1), 90)).contains(filter));
    }

    @Test
    void aNoteThatSaysHowItWasProvedIsNotListed() throws IOException {
        note("note-2026-proved-aaaa", "date=\"2026-01-02\" status=\"SEEN\"",
                "x</text><action>Did it</action><verification>Held</verification>");
        note("note-2026-open-bbbb", "date=\"2026-01-02\" status=\"SEEN\"", "x</text><action>Did it</action>");
        var found = ids(desk().toConfirm(TODAY, 30));
        assertTrue(found.contains("note-2026-open-bbbb") && !found.contains("note-2026-proved-aaaa"), found.toString());
    }

    @ParameterizedTest
    @CsvSource({"'<verification>Held</verification>',false", "'',true"})
    void aClosedJobWithWorkDoneIsListedUntilItIsProved(String proof, boolean listed) throws IOException {
        job("job-2026-x-aaaa", "2026-02-01", proof + "<unit href=\"../../units/lorry-21.xmi#lorry-21\"/>"
                + done("read-codes", ""));
        assertEquals(listed, ids(desk().toConfirm(TODAY, 30)).contains("job-2026-x-aaaa"));
    }

    private void job(String id, String opened, String body) throws IOException {
        put("jobs/2026/" + id + ".xmi", "<book:JobRecord %s id=\"" + id + "\" state=\"CLOSED\" opened=\"" + opened
                + "\" closed=\"" + opened + "\">" + body + "</book:JobRecord>");
    }

    private static String done(String procedure, String renewed) {
        return "<rounds id=\"round-a\"><done><procedure href=\"../../procedures/" + procedure + ".xmi#" + procedure + "\"/>"
                + renewed + "</done></rounds>";
    }

    private static String component(String tag, String id) {
        return "<" + tag + " href=\"../../machines/dravholm-hl26.xmi#" + id + "\"/>";
    }

    private void later(String unit, String opened, String rounds, String after) throws IOException {
        job("job-2026-later-aaaa", opened, "<unit href=\"../../units/" + unit + ".xmi#" + unit + "\"/>" + rounds + after);
    }

    /** Of what was declined and failed, what the later job of the test shows. */
    private List<DeclinedWork.Case> shownByTheLaterJob() {
        return desk().declinedThatFailed().stream().filter(one -> one.failed().id().equals("job-2026-later-aaaa")).toList();
    }

    @Test
    void declinedWorkThatWasDoneLaterIsFoundWithWhatItCostThen() throws IOException {
        later("lorry-14", "2026-05-20", done("renew-pto-pack-filter", ""), "");
        var found = shownByTheLaterJob();
        assertEquals(1, found.size());
        assertEquals(List.of("Filter of the power pack", "97.10", "job-2026-later-aaaa", Why.SAME_WORK),
                List.of(found.get(0).what(), found.get(0).price(), found.get(0).failed().id(), found.get(0).why()));
    }

    @Test
    void declinedWorkIsFoundByTheComponentRenewedLater() throws IOException {
        var offered = component(demo.text("procedures/renew-pto-pack-filter.xmi"));
        later("lorry-14", "2026-05-20", done("read-codes", component("renewed", offered)), "");
        assertEquals(List.of(Why.SAME_COMPONENT),
                shownByTheLaterJob().stream().map(DeclinedWork.Case::why).toList());
    }

    /**
     * Declined: renewing the clutch pack, said in the procedure to be work on the whole unit. It always renews the pack and the
     * output seal, and the end ring only if it is found bad; the input gear is in the unit, too, but no part of the work.
     */
    @ParameterizedTest
    @CsvSource({"pto-unit,true", "pto-clutch-pack,true", "pto-friction-plates,true", "pto-input-gear,false",
        "pto-end-ring-place,true", "pto-output-bearings,false"})
    void onlyWhatTheDeclinedWorkWouldHaveRenewedIsFound(String renewed, boolean isFound) throws IOException {
        var procedure = "procedures/renew-pto-clutch-pack.xmi";
        var text = demo.text(procedure).replaceFirst("(<component\\s+href=\"[^#]+#)[a-z0-9-]+", "$1pto-unit");
        Files.writeString(demo.root().resolve(procedure), text);
        job("job-2026-first-aaaa", "2026-02-01", "<unit href=\"../../units/lorry-21.xmi#lorry-21\"/><offers answer=\"DECLINED\">"
                + "<procedure href=\"../../procedures/renew-pto-clutch-pack.xmi#renew-pto-clutch-pack\"/></offers>");
        later("lorry-21", "2026-05-20", done("read-codes", component("renewed", renewed)), "");
        assertEquals(isFound, desk().declinedThatFailed().stream().anyMatch(one -> one.offered().id().contains("first")
                && one.why() == Why.SAME_COMPONENT));
    }

    private static String component(String procedure) {
        var matcher = java.util.regex.Pattern.compile("<component\\s+href=\"[^#]+#([a-z0-9-]+)\"").matcher(procedure);
        assertTrue(matcher.find());
        return matcher.group(1);
    }

    @ParameterizedTest
    @CsvSource({"lorry-17,2026-05-20", "lorry-14,2025-05-20"})
    void anotherUnitOrAnEarlierJobIsNoFailure(String unit, String opened) throws IOException {
        later(unit, opened, done("renew-pto-pack-filter", ""), "");
        assertEquals(List.of(), shownByTheLaterJob());
    }

    @Test
    void theSameNoteWrittenTwiceIsALikelyDuplicate() throws IOException {
        var text = "Filter of the power pack black with sludge four months after the burnt clutch pack</text>"
                + "<machine href=\"../../machines/dravholm-hl26.xmi#dravholm-hl26\"/>"
                + "<codes href=\"../../codes/code-4c09.xmi#code-4c09\"/>";
        note("note-2026-one-aaaa", "date=\"2026-10-01\"", text);
        note("note-2026-two-bbbb", "date=\"2026-10-02\"", text.replace("four months", "some weeks"));
        note("note-2026-far-cccc", "date=\"2026-10-03\"", "Sweeper belt too loose</text>");
        var pairs = new Duplicates(demo.open()).amongUnsorted();
        assertEquals(Set.of("note-2026-one-aaaa", "note-2026-two-bbbb"),
                Set.of(pairs.get(0).one().id(), pairs.get(0).other().id()));
        assertTrue(pairs.stream().noneMatch(pair -> pair.one().id().contains("far") || pair.other().id().contains("far")));
    }

    @Test
    void theWordsComparedAreThoseOfTheFunctionGiven() throws IOException {
        note("note-2026-one-aaaa", "title=\"Bent pin\"", "alpha</text>");
        note("note-2026-two-bbbb", "title=\"Bent pin\"", "omega</text>");
        var library = demo.open();
        var row = library.catalogue().byId("note-2026-one-aaaa").orElseThrow();
        assertEquals(1, new Duplicates(library, text -> Set.of("same")).of(row).size());
        assertEquals(0, new Duplicates(library, text -> Set.of(text)).of(row).size());
    }

    /** In the demonstration the later note counts the earlier one among its sightings: they are the same case. */
    @Test
    void theTwoNotesOfOneCaseInTheDemonstrationAreFoundAndFewOthers() {
        var library = demo.open();
        var finder = new Duplicates(library);
        var found = library.catalogue().rows(Kind.NOTE).flatMap(row -> finder.of(row).stream()).map(pair -> pair.one().id())
                .collect(Collectors.toSet());
        assertTrue(found.containsAll(Set.of("note-2022-teach-in-14-actuator-first-time-p3zk",
                "note-2025-learning-fails-on-a-fresh-install-k7m3")), found::toString);
        assertTrue(found.size() * 20 <= library.catalogue().rows(Kind.NOTE).count(), found::toString);
    }
}
