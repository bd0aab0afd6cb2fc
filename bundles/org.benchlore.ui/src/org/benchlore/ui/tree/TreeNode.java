// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tree;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Address;

/**
 * A node of the library's tree. It never changes.
 *
 * @param key tells it from its brothers and stays the same when the tree is built anew
 * @param label what is read
 * @param state state of the element in words, or empty
 * @param icon name of its icon
 * @param target what it opens, empty for mere branches
 * @param words further lower-case words under which the filter finds it
 * @param children in the order they are shown
 */
public record TreeNode(String key, String label, String state, String icon, Optional<Address> target, String words,
        List<TreeNode> children) {

    /**
     * Makes a branch that opens nothing.
     *
     * @param key its key
     * @param label what is read
     * @param icon name of its icon
     * @param children in order
     * @return the branch
     */
    static TreeNode branch(String key, String label, String icon, List<TreeNode> children) {
        return new TreeNode(key, label, "", icon, Optional.empty(), "", List.copyOf(children));
    }

    /**
     * Returns the same node over other children.
     *
     * @param others the children
     * @return a new node
     */
    TreeNode with(List<TreeNode> others) {
        return new TreeNode(key, label, state, icon, target, words, List.copyOf(others));
    }

    /**
     * Returns what is shown.
     *
     * @return the label, and how many there are or the state
     */
    String text() {
        if (target.isEmpty()) {
            return label + "  (" + children.size() + ")";
        }
        return state.isEmpty() ? label : label + "  ·  " + state;
    }

    /**
     * Adds what the ends of the branches open; a machine above them is the way there, not one of them.
     *
     * @param found is added to
     */
    void collect(Set<Address> found) {
        if (children.isEmpty()) {
            target.ifPresent(found::add);
        }
        children.forEach(child -> child.collect(found));
    }
}
