// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.benchlore.evidence.Wear;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.MeterReading;
import org.benchlore.model.Unit;
import org.benchlore.store.KindFacts.Life;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/**
 * How likely a part wears out while its unit is kept, by its life data and the unit's meter. The meter goes on as it went
 * between its first and its last reading; a part that no job renewed is as old as the unit.
 */
final class Wearing {

    private static final double DAYS_IN_A_MONTH = 30.4375;

    private final Library library;
    private final Unit unit;
    private final LocalDate today;

    Wearing(Library library, Unit unit, LocalDate today) {
        this.library = library;
        this.unit = unit;
        this.today = today;
    }

    /** Empty where the meter does not say enough, or was replaced. */
    OptionalDouble chance(Life life, Address component, int months) {
        var scale = Quantity.parse(life.scale());
        var readings = unit.getMeters().stream().filter(it -> it.getDate() != null && isLike(it.getValue(), scale))
                .sorted(Comparator.comparing(MeterReading::getDate)).toList();
        if (readings.isEmpty() || unit.getMeters().stream().anyMatch(it -> it.isReplaced())) {
            return OptionalDouble.empty();
        }
        double perDay = perDay(readings, scale);
        var last = readings.get(readings.size() - 1);
        double now = in(last.getValue(), scale) + perDay * Math.max(0, ChronoUnit.DAYS.between(last.getDate(), today));
        double age = Math.max(0, now - fittedAt(component, scale));
        return perDay > 0 ? OptionalDouble.of(new Wear(life.shape().doubleValue(), scale.value().doubleValue())
                .failsWithin(age, perDay * months * DAYS_IN_A_MONTH)) : OptionalDouble.empty();
    }

    private double perDay(List<MeterReading> readings, Quantity scale) {
        var first = readings.get(0);
        var last = readings.get(readings.size() - 1);
        boolean isOne = first.getDate().equals(last.getDate());
        if (isOne && unit.getBuilt() == null) {
            return 0;
        }
        long days = ChronoUnit.DAYS.between(isOne ? unit.getBuilt() : first.getDate(), last.getDate());
        double gone = in(last.getValue(), scale) - (isOne ? 0 : in(first.getValue(), scale));
        return days <= 0 ? 0 : gone / days;
    }

    /** The reading at the last job that renewed it, 0 where none did or none says. */
    private double fittedAt(Address component, Quantity scale) {
        var own = library.addressOf(unit);
        return library.catalogue().rows(Kind.JOB).filter(row -> row.date().isPresent() && row.job().filter(job ->
                job.unit().equals(own) && job.renewed().contains(component)).isPresent())
                .max(Comparator.comparing((Row row) -> row.date().orElseThrow())).flatMap(row -> read(row.job().orElseThrow().meter()))
                .filter(it -> isLike(it, scale)).map(it -> in(it, scale)).orElse(0.0);
    }

    private static Optional<Quantity> read(String meter) {
        try {
            return meter.isBlank() ? Optional.empty() : Optional.of(Quantity.parse(meter));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static boolean isLike(Quantity one, Quantity scale) {
        return one != null && one.dimension() == scale.dimension();
    }

    private static double in(Quantity quantity, Quantity scale) {
        BigDecimal value = quantity.in(scale.unit());
        return value.doubleValue();
    }
}
