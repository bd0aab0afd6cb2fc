// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.benchlore.model.Address;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TreeFilterTest {

    private static final List<TreeNode> TREE = List.of(
            TreeNode.branch("sweeper", "Street sweeper", "machine", List.of(
                    TreeNode.branch("fan", "Suction", "system", List.of(
                            element("belt", "Renew the fan belt", "reviewed", ""),
                            element("howl", "Fan howls", "held", "b207"))))),
            TreeNode.branch("general", "For all machines", "branch", List.of(
                    element("grease", "Bäring grease", "", ""))));

    private static TreeNode element(String id, String title, String state, String words) {
        return new TreeNode(id, title, state, "note", Optional.of(new Address("notes/" + id + ".xmi", id)), words,
                List.of());
    }

    @ParameterizedTest
    @CsvSource({"fan, belt howl", "FAN belt, belt", "sweeper howls, howl", "b207, howl", "held, howl", "baring, grease",
        "machines, grease", "gearbox, ''", "suction, belt howl"})
    void keepsElementsThatHoldEveryWordInThemselvesOrAboveThem(String typed, String kept) {
        var found = new HashSet<Address>();
        new TreeFilter(typed).keep(TREE).forEach(node -> node.collect(found));
        assertEquals(kept, found.stream().map(Address::id).collect(Collectors.toCollection(TreeSet::new)).stream()
                .collect(Collectors.joining(" ")));
    }
}
