// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.learn;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.TrainingLevel;
import org.benchlore.pack.PackException;

/**
 * How far a learner has come, as the learner's page saves it: lines of words with tabs between them.
 *
 * @param pack title of the pack
 * @param learner the learner's name as typed, may be empty
 * @param tasks one a procedure, in the order of the page
 */
public record Progress(String pack, String learner, List<Task> tasks) {

    private static final String HEAD = "benchlore-progress";
    private static final int LARGEST = 1_000_000;
    private static final int LONGEST_INITIALS = 8;

    /**
     * How far with one procedure.
     *
     * @param procedure its id
     * @param level how far
     * @param on since when, if it was written as a day
     * @param mentor the initials of whoever stood by, may be empty
     */
    public record Task(String procedure, TrainingLevel level, Optional<LocalDate> on, String mentor) {
    }

    /**
     * Tells whether a text may be a progress file.
     *
     * @param text the beginning of a file
     * @return true if it begins as one
     */
    public static boolean isProgress(String text) {
        return text.startsWith(HEAD + "\t");
    }

    /**
     * Reads a progress file.
     *
     * @param text its content
     * @return the progress
     * @throws PackException with a plain sentence if it is none
     */
    public static Progress read(String text) throws PackException {
        var lines = text.split("\r?\n");
        if (text.length() > LARGEST || !lines[0].equals(HEAD + "\t1")) {
            throw new PackException(isProgress(text) && text.length() <= LARGEST
                    ? "The progress file has a version that this program does not know: use a newer program."
                    : "This is no progress file: save it again from the learner's page of a pack.");
        }
        var pack = "";
        var learner = "";
        var tasks = new ArrayList<Task>();
        for (int i = 1; i < lines.length; i++) {
            var words = lines[i].split("\t", -1);
            switch (words[0] + "/" + words.length) {
                case "pack/2" -> pack = words[1];
                case "learner/2" -> learner = words[1];
                case "task/5" -> tasks.add(task(words, i + 1));
                default -> {
                    if (!lines[i].isBlank()) {
                        throw new PackException("Line " + (i + 1) + " of the progress file cannot be read: save it again from the learner's page.");
                    }
                }
            }
        }
        return new Progress(pack, learner, List.copyOf(tasks));
    }

    private static Task task(String[] words, int line) throws PackException {
        var level = TrainingLevel.get(words[2]);
        if (level == null || level == TrainingLevel.NOT_RECORDED) {
            throw new PackException("Line " + line + " of the progress file has no level that this program knows: save it again from the"
                    + " learner's page.");
        }
        var initials = words[4].replaceAll("\\p{Cntrl}", "").strip();
        return new Task(words[1], level, day(words[3]),
                initials.length() <= LONGEST_INITIALS ? initials : initials.substring(0, LONGEST_INITIALS));
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
