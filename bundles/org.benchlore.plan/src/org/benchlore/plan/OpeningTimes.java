// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Access;
import org.benchlore.model.Machine;
import org.benchlore.model.Need;
import org.benchlore.plan.search.AccessNode;
import org.benchlore.plan.search.Option;
import org.benchlore.plan.search.PlanException;
import org.benchlore.plan.search.PlanProblem;
import org.benchlore.plan.search.PlanSearch;
import org.benchlore.plan.search.Target;
import org.benchlore.store.Library;

/**
 * How soon several things on a closed machine are within reach, by the search that plans: what needs one of several, what
 * is covered and what must not be open together counts as it does there. Time by the clock, usual, in minutes; only
 * opening counts, since closing comes once whatever is found.
 */
public final class OpeningTimes {

    private final PlanBook book;
    private final List<AccessNode> nodes = new ArrayList<>();
    private final PlanSearch search = new PlanSearch(PlanSearch.USUAL_BRANCHES);

    /**
     * What is opened.
     *
     * @param minutes how long that takes
     * @param accesses in the order in which they are opened; one that is opened again stands there twice
     */
    public record Opened(long minutes, List<Access> accesses) {
    }

    /**
     * Reads the accesses of a machine.
     *
     * @param library the library
     * @param machine a machine of the library
     * @throws PlanException if the library holds no machine of that id
     */
    public OpeningTimes(Library library, Machine machine) throws PlanException {
        this.book = new PlanBook(library, machine.getId());
        book.accesses().values().forEach(access -> nodes.add(node(access)));
    }

    private AccessNode node(Access access) {
        return new AccessNode(access.getId(), WorkFacts.minutes(access.getStrip(), null).usual(), 0, ids(access.getNeeds()),
                book.ofThisMachine(access.getCovers()), book.ofThisMachine(access.getNotWith()), List.of());
    }

    private List<List<String>> ids(List<Need> needs) {
        return needs.stream().map(need -> book.ofThisMachine(need.getAnyOf())).toList();
    }

    /**
     * Reads needs as a plan reads them.
     *
     * @param needs what a way needs
     * @return ids of accesses, any one of each list will do; empty if a need names accesses of other machines only, so that
     *         the way is not for this one
     */
    public Optional<List<List<String>>> needs(List<Need> needs) {
        var ids = ids(needs);
        for (int i = 0; i < ids.size(); i++) {
            if (ids.get(i).isEmpty() && !needs.get(i).getAnyOf().isEmpty()) {
                return Optional.empty();
            }
        }
        return Optional.of(ids);
    }

    /**
     * Opens for several things at the least time.
     *
     * @param wanted for each thing its needs
     * @return what is opened for all of them
     * @throws PlanException if one of them is out of reach, in one plain sentence
     */
    public Opened open(List<List<List<String>>> wanted) throws PlanException {
        var targets = new ArrayList<Target>();
        for (int i = 0; i < wanted.size(); i++) {
            targets.add(new Target("check " + i, List.of(new Option("way", 0, wanted.get(i))), List.of(), List.of()));
        }
        var found = search.solve(new PlanProblem(nodes, targets, List.of(), List.of(), List.of()));
        return new Opened(found.cost(), found.openings().stream().map(book.accesses()::get).toList());
    }
}
