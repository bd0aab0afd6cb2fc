// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Merges the order of a list. Where only one side moved something, its order holds; additions of both follow the entry
 * that they followed on their own side, mine first.
 */
final class ListMerge {

    private final List<String> base;
    private final List<String> mine;
    private final List<String> theirs;

    ListMerge(List<String> base, List<String> mine, List<String> theirs) {
        this.base = base;
        this.mine = mine;
        this.theirs = theirs;
    }

    /** Entries that stay or came in: what either side removed is gone, what either side added is there. */
    Set<String> members() {
        var members = new HashSet<String>(mine);
        members.addAll(theirs);
        base.stream().filter(entry -> !mine.contains(entry) || !theirs.contains(entry)).forEach(members::remove);
        return members;
    }

    /**
     * Puts entries in order.
     *
     * @param members what the list shall hold
     * @param chooser asked if both sides moved entries differently
     * @return the members in order
     */
    List<String> order(Set<String> members, Supplier<Side> chooser) {
        var first = only(mine, members);
        var second = only(theirs, members);
        boolean theirsLeads = leads(first, second, chooser);
        var result = new ArrayList<>(theirsLeads ? second : first);
        insert(theirsLeads ? first : second, result);
        base.stream().filter(entry -> members.contains(entry) && !result.contains(entry)).forEach(result::add);
        members.stream().filter(entry -> !result.contains(entry)).sorted().forEach(result::add);
        return result;
    }

    private boolean leads(List<String> first, List<String> second, Supplier<Side> chooser) {
        boolean theirsMoved = !isInOrder(base, second);
        if (!theirsMoved || isInOrder(first, second)) {
            return false;
        }
        return isInOrder(base, first) || chooser.get() == Side.THEIRS;
    }

    private static boolean isInOrder(List<String> one, List<String> other) {
        return only(one, new HashSet<>(other)).equals(only(other, new HashSet<>(one)));
    }

    private static List<String> only(List<String> list, Set<String> members) {
        return list.stream().filter(members::contains).toList();
    }

    private static void insert(List<String> from, List<String> into) {
        for (int i = 0; i < from.size(); i++) {
            if (!into.contains(from.get(i))) {
                into.add(afterAnchor(from, i, into), from.get(i));
            }
        }
    }

    /** After the nearest entry before it that is there, and after what the leading side put behind that one. */
    private static int afterAnchor(List<String> from, int index, List<String> into) {
        int at = 0;
        for (int i = index - 1; i >= 0; i--) {
            if (into.contains(from.get(i))) {
                at = into.indexOf(from.get(i)) + 1;
                break;
            }
        }
        while (at < into.size() && !from.contains(into.get(at))) {
            at++;
        }
        return at;
    }
}
