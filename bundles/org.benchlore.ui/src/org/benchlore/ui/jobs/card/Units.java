// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Fastening;
import org.benchlore.model.Measurement;
import org.benchlore.model.Stage;

/** Puts the unit to a bare figure, so that nobody types what the card says already. */
final class Units {

    private static final String BARE = "-?[0-9]+([.,][0-9]+)?";

    private Units() {
    }

    static String with(String typed, Optional<String> unit) {
        var text = typed.strip();
        return text.matches(BARE) ? unit.map(symbol -> text + " " + symbol).orElse(text) : text;
    }

    static Optional<String> of(Measurement asked) {
        return Stream.of(asked.getNominal(), asked.getLow(), asked.getHigh(), asked.getWearLimit())
                .filter(limit -> limit != null).findFirst().map(limit -> limit.unit().symbol());
    }

    /** The last torque of the stages, which is what the wrench is set to in the end. */
    static Optional<Quantity> torque(Fastening asked) {
        return asked.getStages().stream().map(Stage::getTorque).filter(torque -> torque != null)
                .reduce((first, second) -> second);
    }

    static Optional<Quantity> angle(Fastening asked) {
        return asked.getStages().stream().map(Stage::getAngle).filter(angle -> angle != null)
                .reduce((first, second) -> second);
    }
}
