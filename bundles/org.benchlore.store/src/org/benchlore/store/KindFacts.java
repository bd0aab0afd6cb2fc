// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.model.Address;

/** Facts that only one kind of element has, as counting needs them. */
public sealed interface KindFacts {

    /**
     * Facts of a job record.
     *
     * @param unit the unit
     * @param done procedures done
     * @param renewals components renewed, in the order of the rounds; one that was renewed twice stands twice
     * @param leftIn old parts left in place
     * @param failed components that were found to have failed, as written
     * @param meter meter reading on arrival as written, or empty
     * @param closed the day it was handed back
     * @param comebackOf the job it is a comeback of
     * @param comebackReason why it came back, a literal
     */
    record JobFacts(Optional<Address> unit, List<Address> done, List<Renewal> renewals, List<Left> leftIn,
            List<Address> failed, String meter, Optional<LocalDate> closed, Optional<Address> comebackOf,
            String comebackReason) implements KindFacts {

        /**
         * Returns the components renewed.
         *
         * @return each once
         */
        public List<Address> renewed() {
            return renewals.stream().map(Renewal::component).distinct().toList();
        }

        /**
         * Returns the components left in place.
         *
         * @return the components, confirmed or not
         */
        public List<Address> left() {
            return leftIn.stream().map(Left::component).toList();
        }
    }

    /**
     * A component renewed in a job.
     *
     * @param component the component
     * @param fitted every part fitted by the same work
     * @param again whether it was in a later strip of the same job
     */
    record Renewal(Address component, List<Address> fitted, boolean again) {
    }

    /**
     * An old part left in place.
     *
     * @param component where
     * @param part its part number, if somebody read it
     * @param confirmed whether a person confirmed it; otherwise it is only proposed
     */
    record Left(Address component, Optional<Address> part, boolean confirmed) {
    }

    /**
     * Facts of a field note.
     *
     * @param unit on which unit
     * @param component on which component
     * @param job the job it comes from
     * @param tally how often it was seen
     */
    record NoteFacts(Optional<Address> unit, Optional<Address> component, Optional<Address> job,
            Optional<Tally> tally) implements KindFacts {
    }

    /**
     * Seen K times in about N jobs.
     *
     * @param count K, at least the number of sightings
     * @param ofAbout N, or 0 if nobody said
     * @param since the year from which it was counted, or 0 if nobody said
     * @param sightings each time it was seen, as far as written
     */
    record Tally(int count, int ofAbout, int since, List<Sighting> sightings) {
    }

    /**
     * One time it was seen.
     *
     * @param unit on which unit
     * @param date when
     */
    record Sighting(Optional<Address> unit, Optional<LocalDate> date) {
    }

    /**
     * Facts of a machine.
     *
     * @param family its family, or empty
     * @param causes id of a cause to id of its component
     * @param parts id of a component to the parts that fit it
     */
    record MachineFacts(String family, Map<String, String> causes, Map<String, List<Address>> parts)
            implements KindFacts {
    }

    /**
     * Facts of a part.
     *
     * @param supersededBy what replaces it
     * @param life life data, if there are any
     */
    record PartFacts(Optional<Address> supersededBy, Optional<Life> life) implements KindFacts {
    }

    /**
     * Weibull life data.
     *
     * @param shape shape
     * @param scale scale with its unit, as written
     */
    record Life(BigDecimal shape, String scale) {
    }

    /**
     * Facts of a unit.
     *
     * @param keptUntil the year until which it is kept, or 0 if nobody said
     */
    record UnitFacts(int keptUntil) implements KindFacts {
    }
}
