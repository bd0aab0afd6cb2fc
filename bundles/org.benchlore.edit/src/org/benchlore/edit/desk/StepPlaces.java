// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.edit.InnerEdits;
import org.benchlore.model.Address;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.Work;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/** Proposes where a note's words belong as a step: in which procedure, and behind which of its steps. */
public final class StepPlaces {

    private static final int DURING = 100;
    private static final int COMPONENT = 12;
    private static final int MACHINE = 6;
    private static final int WORD = 3;

    private final Library library;

    /**
     * Makes it for a library.
     *
     * @param library an open library
     */
    public StepPlaces(Library library) {
        this.library = library;
    }

    /**
     * Lists the procedures that can take a step, the likeliest first.
     *
     * @param note a note
     * @return rows of all procedures that are not withdrawn
     */
    public List<Row> procedures(FieldNote note) {
        var fits = new HashMap<Row, Integer>();
        library.catalogue().rows(Kind.PROCEDURE).filter(row -> !row.status().equals("WITHDRAWN"))
                .forEach(row -> fits.put(row, fit(note, row)));
        return fits.entrySet().stream().sorted(Comparator.comparing((Map.Entry<Row, Integer> entry) -> -entry.getValue())
                .thenComparing(entry -> entry.getKey().title(), String.CASE_INSENSITIVE_ORDER)).map(Map.Entry::getKey).toList();
    }

    private int fit(FieldNote note, Row row) {
        int fit = WORD * shared(note.getText(), row.title());
        fit += note.getDuring().stream().map(library::addressOf).anyMatch(Optional.of(row.address())::equals) ? DURING : 0;
        fit += has(row.components(), library.addressOf(note.getComponent())) ? COMPONENT : 0;
        return fit + (has(row.machines(), library.addressOf(note.getMachine())) ? MACHINE : 0);
    }

    private static boolean has(List<Address> addresses, Optional<Address> one) {
        return one.filter(addresses::contains).isPresent();
    }

    private static int shared(String text, String other) {
        var words = new HashSet<>(new TextWords(text).telling());
        words.retainAll(new TextWords(other).telling());
        return words.size();
    }

    /**
     * Finds the place among the steps.
     *
     * @param note a note
     * @param work the work that takes the step
     * @return where to insert, from 0: behind the step that shares most words with the note, else {@link InnerEdits#END}
     */
    public static int index(FieldNote note, Work work) {
        int best = 1;
        int at = InnerEdits.END;
        for (int i = 0; i < work.getSteps().size(); i++) {
            int shared = shared(note.getText(), work.getSteps().get(i).getText());
            if (shared > best) {
                best = shared;
                at = i + 1;
            }
        }
        return at;
    }
}
