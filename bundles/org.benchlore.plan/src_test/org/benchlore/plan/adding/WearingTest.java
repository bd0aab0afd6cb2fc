// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.OptionalDouble;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.Unit;
import org.benchlore.plan.QuayCrane;
import org.benchlore.store.KindFacts.Life;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How likely a part wears out while its unit is kept, on Wednesday 4 March 2026; the conditional Weibull by hand. */
class WearingTest {

    @TempDir
    Path folder;

    private QuayCrane crane;

    @BeforeEach
    void brake() throws Exception {
        crane = new QuayCrane(folder).crane("<components id=\"brake\" title=\"Brake\"/>");
    }

    private void unit(String attributes, String meters) throws Exception {
        crane.put("units/crane-1.xmi", "Unit", "id=\"crane-1\" title=\"Crane 1\" " + attributes,
                "<machine href=\"../machines/crane.xmi#crane\"/>" + meters);
    }

    private OptionalDouble wear(String scale, int months) throws Exception {
        try (var library = crane.open()) {
            var unit = (Unit) library.top("crane-1").orElseThrow();
            return new Wearing(library, unit, QuayCrane.WEDNESDAY).chance(new Life(new BigDecimal("2"), scale),
                    new Address(Kind.MACHINE.path("crane"), "brake"), months);
        }
    }

    private static String meter(String value, String date, String more) {
        return "<meters value=\"" + value + "\" " + (date.isEmpty() ? "" : "date=\"" + date + "\" ") + more + "/>";
    }

    private static final double MONTH = 30.4375;

    /** R(t) = exp(−(t / 1000)²), conditional; published as the conditional Weibull. */
    private static double fails(double age, double next) {
        return 1 - Math.exp(Math.pow(age / 1000, 2) - Math.pow((age + next) / 1000, 2));
    }

    /** 100 h on 4 January 2025, 300 h on 22 February 2026, 414 days later, ten days before today. */
    @Test
    void theMeterGoesOnAsItWent() throws Exception {
        unit("", meter("300 h", "2026-02-22", "") + meter("100 h", "2025-01-04", "") + meter("9000 km", "2026-03-01", "")
                + meter("77 h", "", ""));
        double day = 200.0 / 414;
        assertEquals(fails(300 + 10 * day, 12 * MONTH * day), wear("1000 h", 12).orElseThrow(), 1e-9);
        crane.put("jobs/2025/job-2025-a.xmi", "JobRecord", "id=\"job-2025-a\" opened=\"2025-06-01\" closed=\"2025-06-01\" meter=\"200 h\"",
                "<unit href=\"../../units/crane-1.xmi#crane-1\"/>");
        assertEquals(fails(300 + 10 * day, 12 * MONTH * day), wear("1000 h", 12).orElseThrow(), 1e-9, "a job without it changes nothing");
    }

    @Test
    void fromTheLastRenewalOnItIsAsOldAsThat() throws Exception {
        unit("", meter("300 h", "2026-02-22", "") + meter("100 h", "2025-01-04", ""));
        double day = 200.0 / 414;
        renewed("a", "2025-02-01", "meter=\"110 h\"");
        renewed("b", "2025-06-01", "meter=\"170 h\"");
        assertEquals(fails(300 + 10 * day - 170, 6 * MONTH * day), wear("1000 h", 6).orElseThrow(), 1e-9);
        renewed("c", "2025-07-01", "");
        assertEquals(fails(300 + 10 * day, 6 * MONTH * day), wear("1000 h", 6).orElseThrow(), 1e-9, "the last one does not say");
        renewed("c", "2025-07-01", "meter=\"12 km\"");
        assertEquals(fails(300 + 10 * day, 6 * MONTH * day), wear("1000 h", 6).orElseThrow(), 1e-9, "not the same meter");
        renewed("c", "2025-07-01", "meter=\"9000 h\"");
        assertEquals(fails(0, 6 * MONTH * day), wear("1000 h", 6).orElseThrow(), 1e-9, "no part is younger than new");
    }

    private void renewed(String id, String day, String attributes) throws Exception {
        crane.put("jobs/2025/job-2025-" + id + ".xmi", "JobRecord", "id=\"job-2025-" + id + "\" opened=\"" + day + "\" closed=\"" + day
                + "\" state=\"CLOSED\" " + attributes, "<unit href=\"../../units/crane-1.xmi#crane-1\"/><rounds id=\"r\"><done>"
                + "<renewed href=\"../../machines/crane.xmi#brake\"/></done></rounds>");
    }

    @Test
    void oneReadingGoesWithTheDayItWasBuilt() throws Exception {
        unit("built=\"2025-03-04\"", meter("365 h", "2026-03-04", ""));
        assertEquals(fails(365, MONTH), wear("1000 h", 1).orElseThrow(), 1e-9);
        unit("", meter("365 h", "2026-03-04", ""));
        assertEquals(OptionalDouble.empty(), wear("1000 h", 1), "nobody knows how fast");
        unit("built=\"2026-03-04\"", meter("365 h", "2026-03-04", ""));
        assertEquals(OptionalDouble.empty(), wear("1000 h", 1));
    }

    @Test
    void aMeterThatWasReplacedOrStandsOrIsOfAnotherSortSaysNothing() throws Exception {
        unit("", meter("300 h", "2026-02-22", "") + meter("100 h", "2025-01-04", "replaced=\"true\""));
        assertEquals(OptionalDouble.empty(), wear("1000 h", 1));
        unit("", meter("300 h", "2026-02-22", "") + meter("300 h", "2025-01-04", ""));
        assertEquals(OptionalDouble.empty(), wear("1000 h", 1));
        assertEquals(OptionalDouble.empty(), wear("1000 km", 1));
        unit("", "");
        assertEquals(OptionalDouble.empty(), wear("1000 h", 1));
    }

    @Test
    void aReadingOfTheFutureDoesNotRunBackwards() throws Exception {
        unit("", meter("300 h", "2026-03-14", "") + meter("100 h", "2025-03-14", ""));
        assertEquals(fails(300, MONTH * 200 / 365), wear("1000 h", 1).orElseThrow(), 1e-9);
    }
}
