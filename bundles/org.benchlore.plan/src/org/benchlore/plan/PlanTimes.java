// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;

/**
 * Time of a plan. Work is done on Monday to Friday from 8:00, eight hours a day; what nobody attends to runs on through
 * nights and weekends. Both are assumptions that the plan states.
 *
 * @param minutes time by the clock in which somebody works
 * @param billed minutes of all people together, as they are charged
 * @param unattended minutes in which nobody works
 * @param handBack earliest moment at which the machine can be handed back
 */
public record PlanTimes(Minutes minutes, Minutes billed, long unattended, LocalDateTime handBack) {

    /** Minutes in a working day. */
    public static final int DAY = 480;
    private static final LocalTime BEGINS = LocalTime.of(8, 0);

    static PlanTimes of(List<PlanItem> items, LocalDate today, long waitForParts) {
        var minutes = Minutes.NONE;
        var billed = Minutes.NONE;
        long unattended = 0;
        var clock = nextWorkingDay(today).atTime(BEGINS);
        var parts = today.atTime(BEGINS).plusMinutes(waitForParts);
        clock = parts.isAfter(clock) ? roundedUp(parts) : clock;
        for (var item : items) {
            minutes = minutes.plus(item.minutes());
            billed = billed.plus(item.minutes().times(item.people()));
            long pause = unattended(item);
            unattended += pause;
            if (isBefore(item)) {
                clock = worked(clock.plusMinutes(pause), item.minutes().usual());
            } else {
                clock = worked(clock, item.minutes().usual()).plusMinutes(pause);
            }
        }
        return new PlanTimes(minutes, billed, unattended, roundedUp(clock));
    }

    /** A cold start needs the cold first. */
    private static boolean isBefore(PlanItem item) {
        return item.part() == PlanItem.Part.PROOF;
    }

    /** Minutes in which nobody works at an item. */
    public static long unattended(PlanItem item) {
        long body = item.work().map(work -> work.getUnattended().stream().filter(it -> it.getDuration() != null)
                .mapToLong(it -> it.getDuration().minutes()).sum()).orElse(0L);
        return body + item.proof().filter(proof -> proof.getSoak() != null)
                .map(proof -> proof.getSoak().minutes() * (proof.getStarts() == null ? 1 : proof.getStarts())).orElse(0L);
    }

    private static LocalDateTime worked(LocalDateTime from, long minutes) {
        var clock = roundedUp(from);
        long left = minutes;
        while (left > 0) {
            long today = java.time.Duration.between(clock, clock.toLocalDate().atTime(BEGINS).plusMinutes(DAY)).toMinutes();
            if (left <= today) {
                return clock.plusMinutes(left);
            }
            left -= today;
            clock = nextWorkingDay(clock.toLocalDate()).atTime(BEGINS);
        }
        return from;
    }

    /** The same moment if somebody is there, else the next morning on which somebody is. */
    private static LocalDateTime roundedUp(LocalDateTime moment) {
        var day = moment.toLocalDate();
        if (!isWorkingDay(day) || moment.isAfter(day.atTime(BEGINS).plusMinutes(DAY))) {
            return nextWorkingDay(day).atTime(BEGINS);
        }
        return moment.toLocalTime().isBefore(BEGINS) ? day.atTime(BEGINS) : moment;
    }

    private static boolean isWorkingDay(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY;
    }

    private static LocalDate nextWorkingDay(LocalDate day) {
        var next = day.plusDays(1);
        while (!isWorkingDay(next)) {
            next = next.plusDays(1);
        }
        return next;
    }
}
