// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.benchlore.diagnose.Weighing.Weighed;
import org.benchlore.diagnose.book.CaseInHand;
import org.benchlore.diagnose.book.Probe;
import org.benchlore.diagnose.chance.SingleFault;
import org.benchlore.diagnose.order.Check;
import org.benchlore.diagnose.order.CheckOrder;
import org.benchlore.model.Address;
import org.benchlore.terms.CodeReader;

/** Puts the checks that bear on the ranked causes in order. */
final class CheckPlanning {

    private final CaseInHand now;
    private final Map<Address, Weighed> causes = new HashMap<>();
    private final Map<String, Probe> probes = new HashMap<>();
    private final CheckOrder order;

    CheckPlanning(CaseInHand now, Weighing weighing, Ranking ranking) {
        this.now = now;
        ranking.tied().forEach(one -> causes.put(one.candidate().address(), one));
        var shared = new HashMap<String, Double>();
        var checks = new ArrayList<Check>();
        for (var probe : now.probes().offered()) {
            if (isUseful(probe)) {
                probes.put(probe.address().toString(), probe);
                shared.put(probe.procedure().address().toString(), probe.around());
                checks.add(new Check(probe.address().toString(), probe.minutes(), probe.opens(), finds(probe),
                        isCritical(probe)));
            }
        }
        order = new CheckOrder(checks, now.openings().costs(shared),
                SingleFault.posterior(weighing.suspects(), List.copyOf(weighing.clues().values())));
    }

    private boolean isUseful(Probe probe) {
        return !finds(probe).isEmpty() && now.answered().stream().noneMatch(one -> one.probe().equals(probe))
                && !isReadAlready(probe);
    }

    /** A step whose outcomes are told apart by the very codes that were given has been done. */
    private boolean isReadAlready(Probe probe) {
        var given = new HashSet<String>();
        now.findings().stream().filter(Finding::isCode).forEach(finding -> given.add(CodeReader.indexForm(
                finding.label().split(":")[0])));
        return probe.outcomes().stream().flatMap(outcome -> CodeReader.findIn(outcome.answer()).stream())
                .anyMatch(key -> given.contains(key.indexForm()))
                || probe.outcomes().stream().anyMatch(outcome -> List.of(outcome.answer().split("[^\\p{L}\\p{N}]+")).stream()
                        .anyMatch(word -> given.contains(CodeReader.indexForm(word))));
    }

    private Set<String> finds(Probe probe) {
        return probe.finds().stream().filter(causes::containsKey).filter(cause -> now.probes().isLook(probe, cause))
                .map(Address::toString).collect(Collectors.toSet());
    }

    private boolean isCritical(Probe probe) {
        return probe.finds().stream().map(causes::get)
                .anyMatch(one -> one != null && now.book().isCritical(one.candidate().component()));
    }

    Checks checks() {
        var best = order.best();
        var added = order.added(best);
        var next = new ArrayList<NextCheck>();
        for (int i = 0; i < best.size(); i++) {
            next.add(next(best.get(i), added.get(i)));
        }
        return new Checks(List.copyOf(next), order.expected(best), order.expected(order.likeliestFirst()),
                order.expected(order.shortestFirst()));
    }

    private NextCheck next(Check check, double added) {
        var probe = probes.get(check.id());
        var results = probe.outcomes().stream().filter(Probe.Outcome::tells).map(outcome -> new NextCheck.Result(
                outcome.id(), outcome.answer(), named(outcome.points()), named(outcome.against()))).toList();
        return new NextCheck(probe.address().id(), probe.address(), probe.procedure(), probe.text(), results,
                order.alone(check), added, order.chance(check.finds()), check.urgent(), probe.accesses(), probe.timed());
    }

    private List<Named> named(Collection<Address> addresses) {
        return addresses.stream().sorted().flatMap(address -> now.book().library().element(address).stream())
                .flatMap(cause -> now.book().named(cause).stream()).toList();
    }
}
