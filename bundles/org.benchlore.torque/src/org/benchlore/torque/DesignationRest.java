// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

import org.benchlore.measure.Wording;

/** What follows size and pitch: series, tolerance, class, hand; each at most once, in any order. */
final class DesignationRest {

    private static final Pattern SERIES = Pattern.compile("(?i)(UNC|UNF)(?![a-z])(.*)");
    private static final Pattern PITCH_WORD = Pattern.compile("(?i)(coarse|fine)(?![a-z])(.*)");
    private static final Pattern TOLERANCE = Pattern.compile(
            "([3-9][eghGH](?:[3-9][eghGH])?|[123][ABab])(?![0-9A-Za-z])(.*)");
    private static final Pattern HAND = Pattern.compile("(?i)(LH|RH|left[- ]?hand|right[- ]?hand)(?![a-z])(.*)");
    private static final Pattern CLASS = Pattern.compile("(?i)((?:class ?)?[0-9]{1,2}\\.[0-9]|(?:A[1-5][- ]?)?[578]0"
            + "|(?:SAE ?)?(?:grade|gr\\.?) ?[0-9](?:\\.[0-9])?)(?![0-9A-Za-z.])(.*)");

    private final String text;
    private ThreadSeries series;
    private String pitchWord = "";
    private String tolerance;
    private Boolean leftHanded;
    private PropertyClass propertyClass;

    DesignationRest(String text, String rest) {
        this.text = text;
        var left = rest;
        while (!left.isBlank() && !left.equals("-")) {
            left = next(left.replaceFirst("^[ -]+", ""));
        }
    }

    private String next(String rest) {
        var match = SERIES.matcher(rest);
        if (series == null && match.matches()) {
            series = match.group(1).equalsIgnoreCase("UNC") ? ThreadSeries.UNC : ThreadSeries.UNF;
            return match.group(2);
        }
        match = PITCH_WORD.matcher(rest);
        if (pitchWord.isEmpty() && match.matches()) {
            pitchWord = match.group(1).toLowerCase(Locale.ROOT);
            return match.group(2);
        }
        match = TOLERANCE.matcher(rest);
        if (tolerance == null && match.matches()) {
            tolerance = match.group(1);
            return match.group(2);
        }
        return handOrClass(rest);
    }

    private String handOrClass(String rest) {
        var match = HAND.matcher(rest);
        if (leftHanded == null && match.matches()) {
            leftHanded = Character.toLowerCase(match.group(1).charAt(0)) == 'l';
            return match.group(2);
        }
        match = CLASS.matcher(rest);
        if (propertyClass == null && match.matches()) {
            propertyClass = PropertyClass.parse(match.group(1));
            return match.group(2);
        }
        throw Wording.problem(text, "holds '" + Wording.shorten(rest.strip()) + "', which is not known here",
                "M10×1.25-8.8 or 3/8-16 UNC");
    }

    Optional<ThreadSeries> series() {
        return Optional.ofNullable(series);
    }

    boolean isFine() {
        return pitchWord.equals("fine");
    }

    ThreadDesignation designation(BoltThread thread) {
        if (series != null && !thread.series().isInch()) {
            throw Wording.problem(text, "is two things: a metric size and " + series, "M10 or 3/8-16 UNC");
        }
        boolean isCoarse = thread.series() == ThreadSeries.METRIC_COARSE || thread.series() == ThreadSeries.UNC;
        if (!pitchWord.isEmpty() && isFine() == isCoarse) {
            throw Wording.problem(text, "is two things: " + thread + " is " + thread.series().words(),
                    thread.designation());
        }
        return new ThreadDesignation(text, thread, Optional.ofNullable(propertyClass), Boolean.TRUE.equals(leftHanded));
    }
}
