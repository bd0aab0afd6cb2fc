// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Measurement;
import org.benchlore.model.Verdict;

/**
 * A measured value against the limits of its measurement. Sizes are compared exactly, whatever the units; a value on a
 * limit is within it.
 *
 * @param verdict within, not within, or not recorded where a person has to decide
 * @param words what it is, as it follows the value
 */
public record Judged(Verdict verdict, String words) {

    /**
     * Judges a value.
     *
     * @param asked a measurement with its limits, any of which may be missing
     * @param value what was measured
     * @return the verdict with its words
     * @throws IllegalArgumentException with a plain sentence if the value measures something else than the limits
     */
    public static Judged of(Measurement asked, Quantity value) {
        var limits = Stream.of(asked.getLow(), asked.getHigh(), asked.getWearLimit(), asked.getNominal())
                .filter(limit -> limit != null).toList();
        limits.stream().filter(limit -> limit.dimension() != value.dimension()).findFirst().ifPresent(limit -> {
            throw new IllegalArgumentException("'" + value + "' is " + value.dimension().words()
                    + ", but the limit is " + limit + ": write it in " + limit.unit().symbol());
        });
        if (asked.getLow() == null && asked.getHigh() == null && asked.getWearLimit() == null) {
            return new Judged(Verdict.NOT_RECORDED, "no limits are written down: a person decides");
        }
        return worn(asked, value).orElseGet(() -> between(asked, value));
    }

    /** On which side a part wears shows in the other figures; where there are none, nobody but a person can tell. */
    private static Optional<Judged> worn(Measurement asked, Quantity value) {
        var limit = asked.getWearLimit();
        if (limit == null) {
            return Optional.empty();
        }
        var other = Stream.of(asked.getNominal(), asked.getHigh(), asked.getLow()).filter(it -> it != null).findFirst();
        int side = other.map(limit::compareMagnitude).orElse(0);
        if (side == 0) {
            return Optional.of(new Judged(Verdict.NOT_RECORDED, "renew beyond " + limit
                    + ": on which side is not written down, a person decides"));
        }
        return side * value.compareMagnitude(limit) > 0
                ? Optional.of(new Judged(Verdict.FAIL, "beyond the wear limit of " + limit + ": renew"))
                : Optional.empty();
    }

    private static Judged between(Measurement asked, Quantity value) {
        int low = asked.getLow() == null ? 1 : value.compareMagnitude(asked.getLow());
        int high = asked.getHigh() == null ? -1 : value.compareMagnitude(asked.getHigh());
        if (low >= 0 && high <= 0) {
            return new Judged(Verdict.PASS, low == 0 || high == 0 ? "just within limits: on the limit" : "within limits");
        }
        var words = low < 0 ? "below " + asked.getLow() : "above " + asked.getHigh();
        return wearsThere(asked, low < 0) ? new Judged(Verdict.NOT_RECORDED, words + ", not yet beyond the wear limit of "
                + asked.getWearLimit() + ": a person decides") : new Judged(Verdict.FAIL, words);
    }

    private static boolean wearsThere(Measurement asked, boolean isBelow) {
        var limit = asked.getWearLimit();
        return limit != null && (isBelow ? limit.compareMagnitude(asked.getLow()) < 0
                : limit.compareMagnitude(asked.getHigh()) > 0);
    }
}
