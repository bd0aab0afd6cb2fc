// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tree;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Keeps the elements that hold every typed word, in themselves or in the branches above them. */
final class TreeFilter {

    private final List<String> words;

    TreeFilter(String typed) {
        this.words = List.of(plain(typed).strip().split("\\s+"));
    }

    List<TreeNode> keep(List<TreeNode> nodes) {
        return keep(nodes, "");
    }

    private List<TreeNode> keep(List<TreeNode> nodes, String above) {
        var kept = new ArrayList<TreeNode>();
        for (var node : nodes) {
            var text = above + " " + plain(node.label()) + " " + node.state() + " " + node.words();
            var children = keep(node.children(), text);
            if (!children.isEmpty() || node.target().isPresent() && hasAll(text)) {
                kept.add(node.with(children));
            }
        }
        return kept;
    }

    private boolean hasAll(String text) {
        return words.stream().allMatch(text::contains);
    }

    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "").toLowerCase(Locale.ROOT);
    }
}
