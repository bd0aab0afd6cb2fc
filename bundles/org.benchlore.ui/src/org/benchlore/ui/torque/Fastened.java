// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Fastening;
import org.benchlore.model.SequencePattern;
import org.benchlore.model.Stage;
import org.benchlore.model.StageKind;
import org.benchlore.torque.answer.Field;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A fastening of a page, as far as questions can take it in.
 *
 * @param title place, thread, class and count in words
 * @param place where it is
 * @param words what goes into which input
 * @param layout how its fasteners lie
 */
record Fastened(String title, String place, Map<Field, String> words, SequencePattern layout) {

    /** All fastenings below an element, in order. */
    static List<Fastened> below(EObject top) {
        var all = new ArrayList<Fastened>();
        EcoreUtil.<EObject>getAllContents(top, false).forEachRemaining(element -> {
            if (element instanceof Fastening fastening) {
                all.add(of(fastening));
            }
        });
        return List.copyOf(all);
    }

    static Fastened of(Fastening fastening) {
        var words = new EnumMap<Field, String>(Field.class);
        words.put(Field.THREAD, text(fastening.getThread()));
        words.put(Field.CLASS, text(fastening.getPropertyClass()));
        words.put(Field.TORQUE, torque(fastening));
        words.put(Field.ANGLES, angles(fastening));
        words.put(Field.SIZE, size(fastening));
        var title = Stream.of(text(fastening.getPlace()), words.get(Field.THREAD), words.get(Field.CLASS),
                words.get(Field.TORQUE)).filter(word -> !word.isBlank()).collect(Collectors.joining(", "));
        return new Fastened(title.isEmpty() ? fastening.getId() : title, text(fastening.getPlace()), Map.copyOf(words),
                fastening.getPattern());
    }

    private static String text(Object value) {
        return value == null ? "" : value.toString();
    }

    /** The last torque before the first angle: after it nothing is a torque to be judged. */
    private static String torque(Fastening fastening) {
        return fastening.getStages().stream().takeWhile(stage -> stage.getKind() != StageKind.ANGLE)
                .filter(stage -> stage.getTorque() != null).map(stage -> text(stage.getTorque()))
                .reduce("", (before, last) -> last);
    }

    private static String angles(Fastening fastening) {
        return fastening.getStages().stream().filter(stage -> stage.getKind() == StageKind.ANGLE).map(Stage::getAngle)
                .filter(angle -> angle != null).map(Fastened::text).collect(Collectors.joining(" + "));
    }

    /** Rows of a rectangle are not recorded, so two are proposed and can be corrected. */
    private static String size(Fastening fastening) {
        if (fastening.getPattern() == SequencePattern.OWN_ORDER) {
            return text(fastening.getOrder());
        }
        var count = fastening.getCount();
        boolean isTwoRows = fastening.getPattern() == SequencePattern.RECTANGLE && count != null && count % 2 == 0;
        return isTwoRows ? "2x" + count / 2 : text(count);
    }
}
