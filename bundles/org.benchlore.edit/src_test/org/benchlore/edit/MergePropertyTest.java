// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.model.compare.Differences;
import org.benchlore.model.compare.Merge;
import org.benchlore.model.compare.MergeConflict;
import org.benchlore.model.compare.MergeResult;
import org.benchlore.model.compare.Same;
import org.benchlore.model.compare.Side;
import org.benchlore.model.compare.Words;
import org.benchlore.store.BookFormat;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What must hold of every merge, over every element of the demonstration library and many random changes of it. */
class MergePropertyTest {

    private static final int ROUNDS = 5;
    private static final Pattern MARK = Pattern.compile("\\b(mine|theirs)[0-9]+\\b");

    @TempDir
    static Path folder;

    private static List<TopElement> elements;

    @BeforeAll
    static void load() {
        var library = new DemoCopy(folder).open();
        elements = library.catalogue().rows().map(row -> library.top(row.id()).orElseThrow()).toList();
        assertTrue(elements.size() > 90, () -> "only " + elements.size() + " elements");
    }

    private interface Law {
        void check(TopElement base, long seed);
    }

    private static void holds(Law law) {
        long seed = 1;
        for (var base : elements) {
            for (int round = 0; round < ROUNDS; round++) {
                law.check(base, seed++);
            }
        }
    }

    private static TopElement changed(TopElement base, long seed, String mark, boolean mayRemove) {
        var copy = Copies.of(base);
        new RandomEdits(seed, mark).change(copy, 1 + (int) (seed % 6), mayRemove);
        return copy;
    }

    private static MergeResult merge(TopElement base, TopElement mine, TopElement theirs) {
        return new Merge(Optional.of(base), mine, theirs, new Words()).result();
    }

    private static void assertSame(TopElement expected, TopElement actual, long seed) {
        assertTrue(Same.deep(expected, actual), () -> expected.getId() + ", seed " + seed + ": "
                + Differences.between(expected, actual, new Words()));
    }

    @Test
    void withoutAChangeOnTheirSideMineIsTaken() {
        holds((base, seed) -> {
            var mine = changed(base, seed, "mine", true);
            var result = merge(base, mine, Copies.of(base));
            assertEquals(List.of(), result.conflicts(), base.getId() + " " + seed);
            assertSame(mine, result.element(), seed);
        });
    }

    @Test
    void withoutAChangeOnMySideTheirsIsTaken() {
        holds((base, seed) -> {
            var theirs = changed(base, seed, "theirs", true);
            var result = merge(base, Copies.of(base), theirs);
            assertEquals(List.of(), result.conflicts(), base.getId() + " " + seed);
            assertSame(theirs, result.element(), seed);
        });
    }

    @Test
    void theSameChangeOnBothSidesIsTakenOnce() {
        holds((base, seed) -> {
            var result = merge(base, changed(base, seed, "same", true), changed(base, seed, "same", true));
            assertEquals(List.of(), result.conflicts(), base.getId() + " " + seed);
            assertSame(changed(base, seed, "same", true), result.element(), seed);
        });
    }

    @Test
    void noAdditionOfEitherSideIsLost() {
        holds((base, seed) -> {
            var first = new RandomEdits(seed, "mine");
            var second = new RandomEdits(seed + 500_000, "theirs");
            var mine = Copies.of(base);
            var theirs = Copies.of(base);
            first.change(mine, 5, false);
            second.change(theirs, 5, false);
            var text = text(merge(base, mine, theirs).element());
            assertTrue(first.added.stream().allMatch(word -> text.contains(word)), () -> base.getId() + " " + seed);
            assertTrue(second.added.stream().allMatch(word -> text.contains(word)), () -> base.getId() + " " + seed);
        });
    }

    @Test
    void changesOfDifferentFieldsAreAllThereWithoutAQuestion() {
        int[] independent = {0};
        holds((base, seed) -> {
            var first = new RandomEdits(seed, "mine");
            var second = new RandomEdits(seed + 900_000, "theirs");
            var mine = Copies.of(base);
            var theirs = Copies.of(base);
            first.change(mine, 3, false);
            second.change(theirs, 3, false);
            if (first.touched.stream().noneMatch(second.touched::contains)
                    && first.touched.stream().noneMatch(field -> field.startsWith("?"))) {
                independent[0]++;
                var result = merge(base, mine, theirs);
                assertEquals(List.of(), result.conflicts(), base.getId() + " " + seed);
                var text = text(result.element());
                var marks = MARK.matcher(text(mine) + text(theirs)).results().map(found -> found.group()).toList();
                assertEquals(List.of(), marks.stream().filter(mark -> !text.contains(mark)).toList(), base.getId() + seed);
            }
        });
        assertTrue(independent[0] > elements.size(), () -> "only " + independent[0] + " were independent");
    }

    @Test
    void sidesMayBeExchanged() {
        holds((base, seed) -> {
            var mine = changed(base, seed, "mine", true);
            var theirs = changed(base, seed + 700_000, "theirs", true);
            var forward = new Merge(Optional.of(base), mine, theirs, new Words());
            var backward = new Merge(Optional.of(base), theirs, mine, new Words());
            assertEquals(ids(forward.result()), ids(backward.result()), base.getId() + " " + seed);
            assertEquals(words(forward.result().element()), words(backward.decided(all(backward, Side.THEIRS)).element()),
                    base.getId() + " " + seed);
        });
    }

    private static TreeSet<String> ids(MergeResult result) {
        return result.conflicts().stream().map(MergeConflict::id).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Map<String, Side> all(Merge merge, Side side) {
        return merge.result().conflicts().stream().collect(Collectors.toMap(MergeConflict::id, question -> side));
    }

    private static List<String> words(TopElement element) {
        var words = new ArrayList<String>();
        element.eAllContents().forEachRemaining(inner -> words.add(inner.eClass().getName() + " " + own(inner)));
        words.add(own(element));
        return words.stream().sorted().toList();
    }

    private static String own(EObject object) {
        return object.eClass().getEAllAttributes().stream().map(field -> object.eGet(field))
                .map(value -> value instanceof List<?> many ? many.stream().map(String::valueOf).sorted().toList() : value)
                .toList().toString();
    }

    @Test
    void whateverIsAnsweredTheResultIsSavedWholeWithEveryIdOnce() {
        holds((base, seed) -> {
            var merge = new Merge(Optional.of(base), changed(base, seed, "mine", true),
                    changed(base, seed + 300_000, "theirs", true), new Words());
            for (var side : Side.values()) {
                var element = merge.decided(all(merge, side)).element();
                var path = Kind.of(element.eClass()).orElseThrow().path(element.getId());
                var file = new BookFormat().read(path, new BookFormat().write(path, element));
                assertTrue(file.isWhole(), () -> base.getId() + " " + seed + file.problems());
                assertTrue(file.problems().stream().noneMatch(problem -> problem.reason().contains("twice")),
                        () -> base.getId() + " " + seed + file.problems());
                assertTrue(Same.deep(element, file.root().orElseThrow()), () -> base.getId() + " " + seed);
            }
        });
    }

    private static String text(TopElement element) {
        var path = Kind.of(element.eClass()).orElseThrow().path(element.getId());
        return new String(new BookFormat().write(path, element), java.nio.charset.StandardCharsets.UTF_8);
    }
}
