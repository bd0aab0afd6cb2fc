// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;

import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Complaints as drivers put them, written down after the words of the library and the comparison were done, and none of
 * either changed for them: what comes first. What is right was judged by hand; common practice, no source.
 */
class ComplaintsOfTheYardTest {

    private static Library library;

    @BeforeAll
    static void open(@TempDir Path cache) throws Exception {
        library = Library.open(Path.of(System.getProperty("benchlore.root"), "procedures"), cache, new NullProgressMonitor());
    }

    @AfterAll
    static void close() throws Exception {
        library.close();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "lorry-14 | engine gets hot going up the hill, fan not roaring | Cap does not hold its pressure",
        "lorry-25 | wheel hub hot after drive, pulls left | Oil on the brake linings",
        "lorry-08 | squeal from belt on cold morning | Belt tensioner weak",
        "sweeper-5 | oil on the road under the brush arm | Shaft seal of the left brush motor leaks",
        "sweeper-7 | fan shakes the whole truck | Dirt baked on to the fan wheel",
        "van-11 | sliding door wont lock | Wire broken in the chain of the sliding door",
        "forklift-2 | pump screams and is slow lifting | Hydraulic pump worn",
        "workboat-petrel | bilge pump never stops | Stern gland drips too much",
        "excavator-1 | track keeps coming off | Track slack",
        "generator-2 | stops after one hour, too hot | Radiator blocked with fluff",
        "lift-ferry-steps | pump in pit runs when tide is high | Flap held open by a stone",
        "lorry-26 | battery light glows and dead on monday | Alternator does not charge"})
    void whatComesFirstIsWhatABenchWouldLookAt(String unit, String complaint, String cause) throws Exception {
        assertEquals(cause, ask(unit, complaint).causes().get(0).title());
    }

    /** These went wrong once: the words or the cause were mended for them. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "lorry-17 | hook arm drops slowly by itself | Seals of a lift cylinder worn",
        "forklift-3 | steering is heavy | Kingpin bearings dry or rusted",
        "forklift-1 | truck dead after a bump | Contacts of the battery plug burnt",
        "forklift-2 | wont lift full pallet | Dirt in the limiting valve",
        "workboat-petrel | gearbox slips ahead | Shift cable of the gear does not reach its stop",
        "lift-ferry-steps | lift motor hums | Brake of the machine does not open"})
    void whatWentWrongOnceStaysMended(String unit, String complaint, String cause) throws Exception {
        assertEquals(cause, ask(unit, complaint).causes().get(0).title());
    }

    /** A battery is tested with the tester, not by a service. */
    @Test
    void aVanThatDoesNotStartIsLookedAtBeforeItIsServiced() throws Exception {
        assertEquals(List.of("cause-van-battery-worn", "cause-van-crank-sensor-hot"),
                ask("van-05", "van wont start when hot, cranks ok").checks().order().stream().map(NextCheck::id).toList());
    }

    private static Assessment ask(String unit, String complaint) throws Exception {
        return new Diagnoses(library).ask(SmallShop.question(unit, List.of(complaint), List.of(), null));
    }
}
