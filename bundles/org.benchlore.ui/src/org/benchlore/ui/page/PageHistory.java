// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;

/** The elements that were read, in order, to go back to and forward again; for one library. */
public final class PageHistory {

    private static final int MOST = 100;

    private final List<Address> visited = new ArrayList<>();
    private int current = -1;

    /**
     * Notes that an element is read now. What was ahead of it is forgotten, unless it is the current one anyway.
     *
     * @param address the element
     */
    public void visit(Address address) {
        if (current >= 0 && visited.get(current).equals(address)) {
            return;
        }
        visited.subList(current + 1, visited.size()).clear();
        if (visited.size() == MOST) {
            visited.remove(0);
        }
        visited.add(address);
        current = visited.size() - 1;
    }

    /**
     * Goes back.
     *
     * @return the element that was read before, or empty at the beginning
     */
    public Optional<Address> back() {
        return canGo(-1) ? Optional.of(visited.get(--current)) : Optional.empty();
    }

    /**
     * Goes forward again.
     *
     * @return the element that was read after this one, or empty at the end
     */
    public Optional<Address> forward() {
        return canGo(1) ? Optional.of(visited.get(++current)) : Optional.empty();
    }

    /**
     * Tells whether there is something to go to.
     *
     * @param step -1 for back, 1 for forward
     * @return true if there is
     */
    public boolean canGo(int step) {
        return current + step >= 0 && current + step < visited.size();
    }

    /**
     * Lists what was read up to now.
     *
     * @return the elements, the latest first
     */
    public List<Address> latestFirst() {
        var latest = new ArrayList<>(visited.subList(0, current + 1));
        Collections.reverse(latest);
        return latest;
    }

    /** Forgets everything, since another library is open. */
    public void clear() {
        visited.clear();
        current = -1;
    }
}
