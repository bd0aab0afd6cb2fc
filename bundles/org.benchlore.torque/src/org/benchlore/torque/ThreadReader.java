// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.benchlore.measure.Wording;

/** Reads a thread designation and says in one sentence what is wrong if it cannot. */
final class ThreadReader {

    private static final String EXAMPLE = "M10, M10×1.25-8.8 or 3/8-16 UNC";
    private static final int LONGEST = 40;
    private static final Pattern METRIC = Pattern.compile("[Mm] ?([0-9]{1,2}(?:\\.[0-9]{1,2})?)(?![0-9])"
            + "(?: ?x ?([0-9]{1,3}(?:\\.[0-9]{1,3})?)(?![0-9]))?(.*)");
    private static final Pattern FRACTION = Pattern.compile(
            "(?:([0-9])(?: |-|\" ?))?([0-9]{1,2})/([0-9]{1,2})(?![0-9]) ?\"?(?: ?- ?([0-9]{1,2})(?![0-9.]))?(.*)");
    private static final Pattern WHOLE = Pattern.compile("([0-9])(?![0-9.]) ?\"?(?: ?- ?([0-9]{1,2})(?![0-9.]))?(.*)");

    private final ThreadTable table = new ThreadTable();

    ThreadDesignation read(String entered) {
        var text = entered == null ? "" : entered.strip();
        if (text.isEmpty()) {
            throw new IllegalArgumentException("No thread is written here: write for example " + EXAMPLE + ".");
        }
        if (text.length() > LONGEST || text.chars().anyMatch(c -> Character.isISOControl(c))) {
            throw Wording.problem(text, "is no thread", EXAMPLE);
        }
        return read(text, plain(text));
    }

    private ThreadDesignation read(String text, String plain) {
        OtherThreads.whyNot(plain).ifPresent(why -> {
            throw Wording.problem(text, why, EXAMPLE);
        });
        Matcher metric = METRIC.matcher(plain);
        if (metric.matches()) {
            return metric(text, metric);
        }
        Matcher fraction = FRACTION.matcher(plain);
        if (fraction.matches()) {
            return inch(text, fraction(text, fraction), fraction.group(4), fraction.group(5));
        }
        Matcher whole = WHOLE.matcher(plain);
        if (whole.matches()) {
            return inch(text, Double.parseDouble(whole.group(1)), whole.group(2), whole.group(3));
        }
        throw Wording.problem(text, "is no thread known here", EXAMPLE);
    }

    /** Look-alikes people paste: multiplication signs, dashes, decimal commas, other spaces and inch marks. */
    private static String plain(String text) {
        return text.replaceAll("[×X*✕]", "x").replaceAll("[‐‑‒–—−]", "-").replace(',', '.').replaceAll("[″”“]", "\"")
                .replaceAll("[\\s\u00A0\u2009\u202F]+", " ");
    }

    private ThreadDesignation metric(String text, Matcher matcher) {
        var size = table.metric(Double.parseDouble(matcher.group(1))).orElseThrow(() -> Wording.problem(text,
                "has a size that is not known here (" + table.metricChoice() + ", the range of ISO 898-1; "
                        + "for others take the maker's figure)", EXAMPLE));
        var rest = new DesignationRest(text, matcher.group(3));
        var pitch = matcher.group(2);
        if (pitch == null) {
            if (rest.isFine()) {
                throw new IllegalArgumentException("'" + Wording.shorten(text) + "' leaves the fine pitch open: write "
                        + "the pitch, for M" + size.name() + " one of " + size.choice() + ".");
            }
            pitch = size.pitches().get(0);
        }
        var written = pitch;
        var listed = size.pitch(written).orElseThrow(() -> new IllegalArgumentException("'" + Wording.shorten(text)
                + "' has the pitch " + written + ", but M" + size.name() + " has " + size.choice()
                + ": write one of these, and leave a length out."));
        return rest.designation(ThreadTable.metric(size, listed));
    }

    private static double fraction(String text, Matcher matcher) {
        double below = Double.parseDouble(matcher.group(3));
        double above = Double.parseDouble(matcher.group(2));
        if (below == 0 || above == 0 || above >= below) {
            throw Wording.problem(text, "is no inch size", EXAMPLE);
        }
        return (matcher.group(1) == null ? 0 : Double.parseDouble(matcher.group(1))) + above / below;
    }

    private ThreadDesignation inch(String text, double inches, String threads, String more) {
        var size = table.inch(inches).orElseThrow(() -> Wording.problem(text,
                "has a size that is not known here (" + table.inchChoice() + ")", EXAMPLE));
        var rest = new DesignationRest(text, more);
        var chosen = threads == null ? fromSeries(text, size, rest) : size.pitch(threads).orElseThrow(() ->
                new IllegalArgumentException("'" + Wording.shorten(text) + "' has " + threads + " threads to the inch, "
                        + "but " + size.name() + " has " + size.choice() + ": write for example " + size.name() + "-"
                        + size.pitches().get(0) + "."));
        var thread = ThreadTable.inch(size, chosen);
        if (rest.series().filter(series -> series != thread.series()).isPresent()) {
            throw Wording.problem(text, "is two things: " + size.name() + "-" + chosen + " is " + thread.series(),
                    thread.designation());
        }
        return rest.designation(thread);
    }

    private static String fromSeries(String text, ThreadTable.Size size, DesignationRest rest) {
        var series = rest.series().orElseThrow(() -> new IllegalArgumentException("'" + Wording.shorten(text)
                + "' leaves the threads to the inch open: write " + size.name() + "-" + size.pitches().get(0) + " or "
                + size.name() + "-" + size.pitches().get(1) + "."));
        return size.pitches().get(series == ThreadSeries.UNC ? 0 : 1);
    }
}
