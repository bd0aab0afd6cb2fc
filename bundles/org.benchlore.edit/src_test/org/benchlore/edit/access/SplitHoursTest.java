// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.DemoCopy;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.SaveAll;
import org.benchlore.edit.SaveOrder;
import org.benchlore.edit.Sessions;
import org.benchlore.measure.Dimension;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Access;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.store.LibraryException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hours of a whole job become an access of the machine and a way that needs it. */
class SplitHoursTest {

    private static final String SWEEPER = "machines/quillfen-s6.xmi";
    private static final String BEARINGS = "procedures/renew-sweeper-fan-bearings.xmi";

    @TempDir
    Path folder;

    private DemoCopy demo;
    private Sessions sessions;
    private EditSession machine;
    private EditSession procedure;
    private int had;

    @BeforeEach
    void open() throws LibraryException {
        demo = new DemoCopy(folder);
        sessions = demo.sessions();
        machine = sessions.open(SWEEPER);
        procedure = sessions.open(BEARINGS);
        had = sweeper().getAccesses().size();
    }

    private static Optional<Quantity> time(String text) {
        return Optional.of(Quantity.parse(text, Dimension.TIME));
    }

    private static Hours hours(String strip, String refit) {
        return new Hours(time(strip), Optional.empty(), time(refit));
    }

    private Machine sweeper() {
        return (Machine) machine.element();
    }

    private Procedure bearings() {
        return (Procedure) procedure.element();
    }

    /** The one access more than the machine had before. */
    private Access only() {
        assertEquals(had + 1, sweeper().getAccesses().size());
        return sweeper().getAccesses().get(had);
    }

    private void split() {
        new SplitHours(machine, procedure).execute("Suction fan out", hours("1.5 h", "1.5 h"), Hours.NONE);
    }

    @Test
    void theAccessHasStripAndRefitAndTheWayTheRest() {
        split();
        assertEquals("Suction fan out", only().getTitle());
        assertEquals(List.of("1.5 h", "1.5 h", "3.5 h"), List.of(only().getStrip().getMinutesUsual().toString(),
                only().getRefit().getMinutesUsual().toString(),
                bearings().getWays().get(0).getWork().getMinutesUsual().toString()));
    }

    @Test
    void theWayKeepsItsStepsAndNeedsTheAccess() {
        int steps = bearings().getWays().get(0).getWork().getSteps().size();
        split();
        assertEquals(1, bearings().getWays().size());
        assertEquals(steps, bearings().getWays().get(0).getWork().getSteps().size());
        var needed = bearings().getWays().get(0).getNeeds().get(0).getAnyOf().get(0);
        assertEquals(SWEEPER + "#" + only().getId(), sessions.library().addressOf(needed).orElseThrow().toString());
    }

    @Test
    void hoursThatAreSplitGoAndBadHoursThatAreNotStay() {
        split();
        assertNull(bearings().getWholeJobUsual());
        assertEquals("10 h", bearings().getWholeJobBad().toString());
    }

    @Test
    void badHoursGoOnceTheyAreSplitToo() {
        new SplitHours(machine, procedure).execute("Suction fan out", hours("1.5 h", "1.5 h"), hours("3 h", "2 h"));
        assertNull(bearings().getWholeJobBad());
        assertEquals("5 h", bearings().getWays().get(0).getWork().getMinutesBad().toString());
        assertEquals("3 h", only().getStrip().getMinutesBad().toString());
    }

    @Test
    void oneUndoFromEitherFileTakesBothBack() {
        split();
        machine.undo();
        assertEquals(had, sweeper().getAccesses().size());
        assertEquals("6.5 h", bearings().getWholeJobUsual().toString());
        assertEquals(List.of(), bearings().getWays().get(0).getNeeds());
        procedure.redo();
        assertEquals("Suction fan out", only().getTitle());
    }

    @Test
    void bothFilesAreSavedWholeAndLeadToEachOther() {
        split();
        assertEquals(Optional.empty(), SaveAll.save(List.of(machine, procedure)).reason());
        var again = (Procedure) demo.open().top("renew-sweeper-fan-bearings").orElseThrow();
        assertEquals(only().getId(), ((Access) demo.open().resolve(
                again.getWays().get(0).getNeeds().get(0).getAnyOf().get(0)).orElseThrow()).getId());
    }

    @Test
    void theMachineIsToBeSavedBeforeTheProcedureUntilItHasTheAccess() throws LibraryException {
        var order = new SaveOrder(sessions);
        machine.execute(machine.edits().text(sweeper(), Literals.MACHINE__FAMILY, "S"));
        assertEquals(List.of(), order.before(procedure));
        split();
        assertEquals(List.of(machine), order.before(procedure));
        assertEquals(List.of(), order.before(machine));
        machine.save();
        assertEquals(List.of(), order.before(procedure));
    }

    @Test
    void theNextProcedureTakesTheSameAccessWithItsTimes() throws LibraryException {
        split();
        var next = sessions.create(Kind.PROCEDURE, "Renew the fan wheel", 2026);
        var job = (Procedure) next.element();
        next.execute(next.edits().text(job, Literals.PROCEDURE__WHOLE_JOB_USUAL, "5 h"));
        new SplitHours(machine, next).execute("suction FAN out", hours("9 h", "9 h"), Hours.NONE);
        assertEquals("1.5 h", only().getStrip().getMinutesUsual().toString());
        assertEquals("2 h", job.getWays().get(0).getWork().getMinutesUsual().toString());
        assertEquals(1, job.getWays().get(0).getNeeds().size());
    }

    @Test
    void aProcedureWithAccessesIsNotSplitAgain() {
        split();
        assertThrows(IllegalArgumentException.class, () -> new SplitHours(machine, procedure));
        assertTrue(SplitHours.problem(bearings()).orElseThrow().contains("names its accesses already"));
    }

    @Test
    void whatIsMissingIsSaidAndNothingIsChanged() {
        var refused = assertThrows(IllegalArgumentException.class, () -> new SplitHours(machine, procedure)
                .execute("Suction fan out", new Hours(time("1 h"), Optional.empty(), Optional.empty()), Hours.NONE));
        assertTrue(refused.getMessage().startsWith("How long the refit takes is not said yet"), refused.getMessage());
        assertFalse(machine.isDirty() || procedure.isDirty());
    }

    @Test
    void aMachineOffersItsProceduresThatHaveHoursToSplit() {
        var places = new SplitPlaces(sessions);
        assertEquals(List.of("procedures/check-sweeper-fan-vibration.xmi", BEARINGS),
                places.of(sweeper()).stream().map(SplitPlaces.Place::procedure).toList());
        split();
        assertEquals(List.of("procedures/check-sweeper-fan-vibration.xmi"),
                places.of(sweeper()).stream().map(SplitPlaces.Place::procedure).toList());
        assertEquals(List.of(SWEEPER), places.of(bearings()).stream().map(SplitPlaces.Place::machine).toList());
    }

    @Test
    void whoLeadsToAComponentIsFoundByWhatIsInItToo() {
        var fan = sweeper().eResource().getEObject("fan-bearings").eContainer();
        var paths = AccessEdits.leadingTo(machine, fan).stream().map(row -> row.path()).toList();
        assertTrue(paths.contains(BEARINGS), paths.toString());
        assertEquals(List.of(), AccessEdits.leadingTo(machine, sweeper().getFunctions().get(0)));
    }

    @Test
    void removingAnAccessTakesAwayNeedsThatOnlyItFulfils() throws LibraryException {
        var lorry = sessions.open("machines/dravholm-hl26.xmi");
        var needed = ((Machine) lorry.element()).getAccesses().stream().flatMap(access -> access.getNeeds().stream())
                .filter(need -> need.getAnyOf().size() == 1).findFirst().orElseThrow();
        var before = lorry.bytes();
        lorry.execute(AccessEdits.remove(lorry, needed.getAnyOf().get(0)));
        assertTrue(((Machine) lorry.element()).getAccesses().stream().flatMap(access -> access.getNeeds().stream())
                .noneMatch(need -> need.getAnyOf().isEmpty()));
        lorry.undo();
        assertEquals(new String(before), new String(lorry.bytes()));
    }
}
