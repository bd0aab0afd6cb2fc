// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

import org.benchlore.check.rules.Rules;
import org.benchlore.check.words.TradeWords;
import org.benchlore.model.compare.Words;
import org.benchlore.terms.WordGroups;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The mirror of a rule: a defect that it finds once and at its element, and something like it that it passes over. */
public abstract class Mirror {

    /** The day by which the demonstration library is judged. */
    public static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static final Rules RULES = new Rules(new TradeWords(WordGroups.withBuiltIn(List.of())), DAY);

    private final String rule;
    private final String path;
    private final Consumer<Spoil> defect;
    private final String at;
    private final Consumer<Spoil> near;

    @TempDir
    Path folder;

    /** Names the rule, the file, the defect, where it is found, and what looks like it. */
    protected Mirror(String rule, String path, Consumer<Spoil> defect, String at, Consumer<Spoil> near) {
        this.rule = rule;
        this.path = path;
        this.defect = defect;
        this.at = at.contains("#") ? at : path + "#" + at;
        this.near = near;
    }

    @Test
    void theDefectIsFoundOnceAtItsElement() throws Exception {
        assertEquals(List.of(at), found(defect).stream().map(problem -> problem.at().toString()).toList());
    }

    @Test
    void theSentenceSaysWhatToDoInOneLine() throws Exception {
        var sentence = found(defect).get(0).sentence();
        assertFalse(sentence.isBlank() || sentence.contains("\n") || sentence.endsWith("."), sentence);
        assertEquals(sentence.substring(0, 1).toUpperCase(Locale.ROOT), sentence.substring(0, 1), sentence);
    }

    @Test
    void whatLooksLikeItIsPassedOver() throws Exception {
        assertEquals(List.of(), found(near));
    }

    private List<Problem> found(Consumer<Spoil> change) throws Exception {
        var spoil = Spoil.file(path);
        change.accept(spoil);
        var own = RULES.all().stream().filter(one -> one.id().equals(rule)).findFirst().orElseThrow();
        if (spoil.isAlone() && !(own instanceof LibraryRule)) {
            return found(own, spoil, new Neighbours(Demo.LIBRARY, DAY));
        }
        var demo = new DemoCopy(folder.resolve(Integer.toHexString(System.identityHashCode(change))));
        spoil.write(demo.root());
        try (var library = demo.open()) {
            return new Checker(library, () -> DAY).all(new NullProgressMonitor()).open().stream()
                    .filter(problem -> problem.rule().equals(rule)).toList();
        }
    }

    /** What a rule finds in a file spoilt alone; nothing for rules over the whole library. */
    static List<Problem> found(String rule, Spoil spoil) {
        var own = RULES.all().stream().filter(one -> one.id().equals(rule)).findFirst().orElseThrow();
        return found(own, spoil, new Neighbours(Demo.LIBRARY, DAY));
    }

    private static List<Problem> found(Rule rule, Spoil spoil, Neighbours neighbours) {
        var findings = new Findings(spoil.path(), new Words());
        var subject = new Subject(spoil.path(), spoil.top());
        if (rule instanceof ElementRule element) {
            element.check(subject, findings.of(rule));
        } else if (rule instanceof NeighbourRule neighbour) {
            neighbour.check(subject, neighbours, findings.of(rule));
        }
        return findings.problems();
    }

    String rule() {
        return rule;
    }

    String path() {
        return path;
    }

    String at() {
        return at;
    }

    Consumer<Spoil> defect() {
        return defect;
    }
}
