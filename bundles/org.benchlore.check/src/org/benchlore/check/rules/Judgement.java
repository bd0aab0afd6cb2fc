// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayList;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.benchlore.model.Fastening;
import org.benchlore.model.StageKind;
import org.benchlore.torque.FrictionRange;
import org.benchlore.torque.Judge;
import org.benchlore.torque.PropertyClass;
import org.benchlore.torque.StatedStage;
import org.benchlore.torque.StatedTorque;
import org.benchlore.torque.Strength;
import org.benchlore.torque.ThreadDesignation;
import org.benchlore.torque.Verdict;

/**
 * What the judge of room torque says of a fastening.
 *
 * @param verdict the verdict, empty where nothing can be judged
 * @param refusal why thread or class cannot be read, empty where they can
 */
record Judgement(Optional<Verdict> verdict, Optional<String> refusal) {

    private static final Judgement NOTHING = new Judgement(Optional.empty(), Optional.empty());

    /**
     * Judges each kind of fastening once: the same thread, class and stages come again and again. Grows with the different
     * ones of a library. Safe for several threads.
     */
    static final class Known {

        private final Map<String, Judgement> known = new ConcurrentHashMap<>();

        Judgement of(Fastening fastening) {
            if (Works.isBlank(fastening.getThread())) {
                return NOTHING;
            }
            var key = new StringBuilder(fastening.getThread()).append('\n').append(fastening.getPropertyClass());
            fastening.getStages().forEach(stage -> key.append('\n').append(stage.getKind()).append(' ').append(stage.getTorque())
                    .append(' ').append(stage.getAngle()));
            return known.computeIfAbsent(key.toString(), unknown -> Judgement.of(fastening));
        }
    }

    /** Judges a fastening whose thread, class and torque are written; the class may stand beside the thread. */
    static Judgement of(Fastening fastening) {
        if (Works.isBlank(fastening.getThread())) {
            return NOTHING;
        }
        try {
            var thread = ThreadDesignation.parse(fastening.getThread());
            var written = Works.isBlank(fastening.getPropertyClass()) ? thread.propertyClass()
                    : Optional.of(PropertyClass.parse(fastening.getPropertyClass()));
            return written.map(propertyClass -> judge(fastening, thread, propertyClass)).orElse(NOTHING);
        } catch (IllegalArgumentException e) {
            return new Judgement(Optional.empty(), Optional.of(e.getMessage()));
        }
    }

    private static Judgement judge(Fastening fastening, ThreadDesignation thread, PropertyClass propertyClass) {
        Strength.of(propertyClass, thread.thread());
        var stages = new ArrayList<StatedStage>();
        for (var stage : fastening.getStages()) {
            if (stage.getKind() == StageKind.TORQUE && stage.getTorque() != null) {
                stages.add(new StatedStage.ToTorque(StatedTorque.of(stage.getTorque())));
            } else if (stage.getKind() == StageKind.ANGLE && stage.getAngle() != null) {
                stages.add(new StatedStage.ByAngle(stage.getAngle()));
            }
        }
        if (stages.stream().noneMatch(StatedStage.ToTorque.class::isInstance) || stages.get(0) instanceof StatedStage.ByAngle) {
            return NOTHING;
        }
        return new Judgement(Optional.of(new Judge(thread, propertyClass, FrictionRange.usual(propertyClass)).judge(stages)),
                Optional.empty());
    }

    /** The class as it is written, beside the torque. */
    static String bolt(Fastening fastening) {
        return fastening.getThread() + (Works.isBlank(fastening.getPropertyClass()) ? "" : " " + fastening.getPropertyClass());
    }
}
