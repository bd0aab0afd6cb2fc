// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.measure.Quantity;
import org.benchlore.model.BookFactory;
import org.benchlore.model.Skill;
import org.benchlore.model.Verification;
import org.benchlore.model.Work;
import org.benchlore.plan.PlanItem.Part;
import org.junit.jupiter.api.Test;

/** When a machine can be handed back; each moment is reckoned by hand from Wednesday 4 March 2026. */
class TimesTest {

    private static final LocalDate WEDNESDAY = LocalDate.of(2026, 3, 4);

    private static PlanItem work(long minutes, int people, String... unattended) {
        Work work = BookFactory.eINSTANCE.createWork();
        for (var duration : unattended) {
            var pause = BookFactory.eINSTANCE.createUnattended();
            pause.setDuration(duration.isEmpty() ? null : Quantity.parse(duration));
            work.getUnattended().add(pause);
        }
        return new PlanItem(Part.WORK, "work", "Work", null, Optional.of(work), Optional.empty(), List.of(),
                new Minutes(minutes, 2 * minutes), people, Skill.TECHNICIAN, false);
    }

    private static PlanItem coldStart(String soak, Integer starts) {
        Verification proof = BookFactory.eINSTANCE.createVerification();
        proof.setSoak(soak.isEmpty() ? null : Quantity.parse(soak));
        proof.setStarts(starts);
        return new PlanItem(Part.PROOF, "proof", "Proof", null, Optional.empty(), Optional.of(proof), List.of(),
                new Minutes(10, 10), 1, Skill.TECHNICIAN, false);
    }

    private static String handBack(LocalDate today, long wait, PlanItem... items) {
        return PlanTimes.of(List.of(items), today, wait).handBack().toString();
    }

    @Test
    void timeIsByTheClockAndBilledByHead() {
        var times = PlanTimes.of(List.of(work(30, 2), work(60, 1, "15 min", "", "1 h")), WEDNESDAY, 0);
        assertEquals(new Minutes(90, 180), times.minutes());
        assertEquals(new Minutes(120, 240), times.billed());
        assertEquals(75, times.unattended());
    }

    @Test
    void workBeginsOnTheNextWorkingDayAndLastsEightHoursADay() {
        assertEquals("2026-03-05T08:30", handBack(WEDNESDAY, 0, work(30, 1)));
        assertEquals("2026-03-05T16:00", handBack(WEDNESDAY, 0, work(480, 1)), "a full day ends on that day");
        assertEquals("2026-03-06T08:01", handBack(WEDNESDAY, 0, work(481, 1)));
        assertEquals("2026-03-09T08:10", handBack(WEDNESDAY, 0, work(970, 1)), "Thursday, Friday, and ten minutes of Monday");
    }

    @Test
    void onAFridayOrAWeekendWorkBeginsOnMonday() {
        for (int day = 6; day <= 8; day++) {
            assertEquals("2026-03-09T08:30", handBack(LocalDate.of(2026, 3, day), 0, work(30, 1)), "from March " + day);
        }
    }

    @Test
    void withNothingToDoItIsReadyWhenTheDayBegins() {
        assertEquals("2026-03-05T08:00", handBack(WEDNESDAY, 0));
        assertEquals("2026-03-05T08:00", handBack(WEDNESDAY, 0, work(0, 1)));
    }

    @Test
    void partsThatComeInTheNightOrAtTheWeekendAreFittedInTheMorning() {
        assertEquals("2026-03-05T10:30", handBack(WEDNESDAY, 26 * 60, work(30, 1)), "there on Thursday at ten");
        assertEquals("2026-03-06T08:30", handBack(WEDNESDAY, 34 * 60, work(30, 1)), "there on Thursday at six in the evening");
        assertEquals("2026-03-09T08:30", handBack(WEDNESDAY, 3 * 1440 + 60, work(30, 1)), "there on Saturday");
        assertEquals("2026-03-06T08:30", handBack(WEDNESDAY, 2 * 1440 - 120, work(30, 1)), "there on Friday at six in the morning");
    }

    @Test
    void whatNobodyAttendsToRunsOnThroughTheNight() {
        assertEquals("2026-03-06T08:00", handBack(WEDNESDAY, 0, work(60, 1, "9 h")), "at six in the evening nobody hands it back");
        assertEquals("2026-03-05T11:00", handBack(WEDNESDAY, 0, work(60, 1, "2 h")));
        assertEquals("2026-03-06T08:30", handBack(WEDNESDAY, 0, work(60, 1, "9 h"), work(30, 1)));
        assertEquals("2026-03-05T16:00", handBack(WEDNESDAY, 0, work(60, 1, "7 h")), "the day's last minute");
    }

    @Test
    void aColdStartNeedsTheColdFirst() {
        assertEquals("2026-03-06T08:10", handBack(WEDNESDAY, 0, work(60, 1), coldStart("8 h", 1)), "cold at five, started in the morning");
        assertEquals("2026-03-06T08:10", handBack(WEDNESDAY, 0, work(60, 1), coldStart("8 h", 2)), "16 h are one in the night");
        assertEquals("2026-03-05T09:10", handBack(WEDNESDAY, 0, work(60, 1), coldStart("", 3)));
        assertEquals(960, PlanTimes.unattended(coldStart("8 h", 2)));
        assertEquals(480, PlanTimes.unattended(coldStart("8 h", null)));
    }

    @Test
    void aBadTimeBelowTheUsualOneIsNoBetter() {
        assertEquals(new Minutes(30, 30), Minutes.of(Quantity.parse("30 min"), Quantity.parse("20 min")));
        assertEquals(new Minutes(30, 40), Minutes.of(Quantity.parse("30 min"), Quantity.parse("40 min")));
        assertEquals(new Minutes(20, 20), Minutes.of(null, Quantity.parse("20 min")));
        assertEquals(Minutes.NONE, Minutes.of(null, null));
    }
}
