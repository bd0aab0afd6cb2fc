// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.Map;
import java.util.Optional;

import org.benchlore.model.TopElement;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Merges two versions of one element with the version both were made from, by id and field. What only one side changed
 * is taken, as is what both changed alike; everything else is a question. The versions are not touched.
 */
public final class Merge {

    private final Versions versions;
    private final Words words;

    /**
     * Compares three versions.
     *
     * @param base what both were made from, or empty if each side made the element anew
     * @param mine this side's version
     * @param theirs the other side's version
     * @param words says values and places in the questions
     * @throws IllegalArgumentException if the versions are not of one kind and id
     */
    public Merge(Optional<TopElement> base, TopElement mine, TopElement theirs, Words words) {
        if (mine.eClass() != theirs.eClass() || !String.valueOf(mine.getId()).equals(theirs.getId())) {
            throw new IllegalArgumentException("Only versions of one element can be merged, not '" + mine.getId()
                    + "' with '" + theirs.getId() + "'");
        }
        var origin = base.orElseGet(() -> (TopElement) EcoreUtil.create(mine.eClass()));
        this.versions = Versions.of(origin, mine, theirs);
        this.words = words;
    }

    /**
     * Merges without answers.
     *
     * @return the merged element, in which every question is answered with mine, and the questions
     */
    public MergeResult result() {
        return decided(Map.of());
    }

    /**
     * Merges with answers.
     *
     * @param answers whose value to take, by the id of the question
     * @return the merged element and the questions; an answer can bring up a new question
     */
    public MergeResult decided(Map<String, Side> answers) {
        var asked = new Answers(answers);
        var element = new MergeBuilder(versions, new Layout(versions, asked, words), asked, words).build();
        return new MergeResult((TopElement) element, asked.asked(), asked.open());
    }
}
