// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.Element;
import org.benchlore.model.compare.Words;
import org.eclipse.emf.ecore.EObject;

/** Takes down what the rules find in one file. */
public final class Findings {

    private final String path;
    private final List<Problem> problems = new ArrayList<>();
    private final Words words;
    private Rule rule;

    /**
     * Begins.
     *
     * @param path path of the file below the library
     * @param words says where elements stand
     */
    Findings(String path, Words words) {
        this.path = path;
        this.words = words;
    }

    /** From now on the findings are of this rule. */
    Findings of(Rule now) {
        rule = now;
        return this;
    }

    /**
     * Takes down a problem.
     *
     * @param element the element it is at
     * @param sentence what is wrong and what to do
     */
    public void add(EObject element, String sentence) {
        add(element, sentence, Optional.empty());
    }

    /**
     * Takes down a problem that can be mended without thinking.
     *
     * @param element the element it is at
     * @param sentence what is wrong and what to do
     * @param label what the fix does, as a button says it
     * @param maker makes the edit, of the element or of the nearest one around it that has an id
     */
    public void add(EObject element, String sentence, String label, Fix.Maker maker) {
        add(element, sentence, Optional.of(new Fix(label, address(element), maker)));
    }

    private void add(EObject element, String sentence, Optional<Fix> fix) {
        problems.add(new Problem(rule.id(), rule.severity(), address(element), words.place(named(element)), sentence, fix));
    }

    /** Takes down a problem of a whole file, which need not be loaded. */
    public void add(Address file, String sentence) {
        problems.add(new Problem(rule.id(), rule.severity(), file, "", sentence, Optional.empty()));
    }

    private Address address(EObject element) {
        return named(element) instanceof Element named ? new Address(path, named.getId()) : new Address(path, "");
    }

    private static EObject named(EObject element) {
        var at = element;
        while (at.eContainer() != null && !(at instanceof Element it && it.getId() != null)) {
            at = at.eContainer();
        }
        return at;
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }
}
