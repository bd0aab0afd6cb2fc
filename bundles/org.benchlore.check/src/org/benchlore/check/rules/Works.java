// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.benchlore.model.Fastening;
import org.benchlore.model.Hazard;
import org.benchlore.model.Stage;
import org.benchlore.model.StageKind;
import org.benchlore.model.Step;
import org.benchlore.model.Work;

/** What several rules ask of a body of work. */
final class Works {

    private Works() {
    }

    /** Hazards of the whole work and of its steps. */
    static Stream<Hazard> hazards(Work work) {
        return Stream.concat(work.getHazards().stream(), work.getSteps().stream().flatMap(step -> step.getHazards().stream()));
    }

    static Stream<Fastening> fastenings(Work work) {
        return work.getSteps().stream().flatMap(step -> step.getFastenings().stream());
    }

    /** The step of a work that something in it belongs to. */
    static Step step(Fastening fastening) {
        return fastening.eContainer() instanceof Step step ? step : null;
    }

    static Work work(Fastening fastening) {
        return step(fastening) != null && step(fastening).eContainer() instanceof Work work ? work : null;
    }

    static String plain(String text) {
        return text == null ? "" : text;
    }

    static boolean isBlank(String text) {
        return text == null || text.isBlank();
    }

    /** What people call a fastening. */
    static String name(Fastening fastening) {
        return isBlank(fastening.getPlace()) ? "this fastening" : "'" + fastening.getPlace() + "'";
    }

    static int count(Integer written) {
        return written == null ? 1 : written;
    }

    static boolean hasAngle(Fastening fastening) {
        return fastening.getStages().stream().anyMatch(stage -> stage.getKind() == StageKind.ANGLE);
    }

    static List<Stage> torques(Fastening fastening) {
        return fastening.getStages().stream()
                .filter(stage -> stage.getKind() == StageKind.TORQUE && stage.getTorque() != null).toList();
    }

    /** A sentence with a capital. */
    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A text cut to fit a line. */
    static String shorten(String text) {
        var line = plain(text).replaceAll("\\s+", " ").strip();
        return line.length() <= 60 ? line : line.substring(0, 57) + "…";
    }
}
