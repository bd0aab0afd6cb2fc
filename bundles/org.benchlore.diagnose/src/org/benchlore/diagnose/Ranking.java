// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.benchlore.diagnose.Weighing.Weighed;
import org.benchlore.diagnose.book.CaseInHand;
import org.benchlore.diagnose.book.Cures;
import org.benchlore.diagnose.book.MachineBook;
import org.benchlore.diagnose.chance.Share;
import org.benchlore.model.Cause;

/** Puts the causes in order, each with what moved it. */
final class Ranking {

    private static final int MOST = 10;

    private final CaseInHand now;
    private final Weighing weighing;
    private final Map<String, Double> chances;
    private final List<Weighed> tied;
    private final Cures cures;

    Ranking(CaseInHand now, Weighing weighing) {
        this.now = now;
        this.weighing = weighing;
        this.cures = new Cures(now.book());
        this.chances = weighing.posterior();
        this.tied = weighing.weighed().stream().filter(this::isTied)
                .sorted(Comparator.comparing((Weighed one) -> chances.get(one.candidate().id())).reversed()
                        .thenComparing(one -> one.candidate().title())).toList();
    }

    /** Only what a finding or an answer points at is a cause for this case. */
    private boolean isTied(Weighed one) {
        return !one.witnesses().isEmpty() || now.answered().stream()
                .anyMatch(answered -> answered.outcome().points().contains(one.candidate().address()));
    }

    List<Weighed> tied() {
        return tied;
    }

    double chance(Weighed one) {
        return chances.get(one.candidate().id());
    }

    double elsewhere() {
        return chances.get(Weighing.ELSEWHERE);
    }

    int others() {
        return Math.max(0, tied.size() - MOST);
    }

    List<RankedCause> causes() {
        return tied.stream().limit(MOST).map(this::cause).toList();
    }

    private RankedCause cause(Weighed one) {
        var candidate = one.candidate();
        var counted = one.counted();
        var band = Share.band(counted.prior(), counted.worth(), now.weights().surePercent());
        var book = now.book();
        var cause = candidate.cause();
        return new RankedCause(candidate.address(), candidate.title(), book.named(candidate.component()).orElseThrow(),
                book.isCritical(candidate.component()), chance(one), weighing.with(one.suspect(band[0])),
                weighing.with(one.suspect(band[1])), counted, moves(one), witnesses(one),
                cause.map(this::broughtAboutBy).orElse(List.of()), spoils(one),
                cause.map(Cause::getCheckText).orElse(""), cures.of(candidate));
    }

    private List<Move> moves(Weighed one) {
        var chance = chance(one);
        var moves = new ArrayList<Move>();
        weighing.clues().keySet().forEach(label ->
                moves.add(new Move(label, weighing.without(label, one.candidate().id()), chance)));
        for (var circumstance : one.circumstances()) {
            var suspect = one.suspect().times(1 / circumstance.factor());
            moves.add(new Move(circumstance.text(), weighing.with(suspect), chance));
        }
        return moves.stream().filter(Move::isSeen)
                .sorted(Comparator.comparingDouble((Move move) -> -Math.abs(odds(move.to()) - odds(move.from())))).toList();
    }

    private static double odds(double chance) {
        return Math.log(chance / (1 - chance));
    }

    /** Each paper once, as strongly as it ties any finding; what only counts stands last. */
    private List<Witness> witnesses(Weighed one) {
        var all = new LinkedHashMap<Object, Witness>();
        for (var witness : one.witnesses()) {
            all.merge(List.of(witness.kind(), witness.address()), witness,
                    (first, second) -> second.weight() > first.weight() ? second : first);
        }
        weighing.papers(one.candidate())
                .forEach(witness -> all.putIfAbsent(List.of(witness.kind(), witness.address()), witness));
        return all.values().stream().sorted(Comparator.comparing(Witness::weight).reversed()
                .thenComparing(Witness::kind).thenComparing(Witness::title)).toList();
    }

    private List<Named> broughtAboutBy(Cause cause) {
        return cause.getCausedBy().stream().flatMap(other -> now.book().named(other).stream()).toList();
    }

    /** What its component ruins, and the causes that name it as theirs. */
    private List<Named> spoils(Weighed one) {
        var book = now.book();
        var all = new ArrayList<Named>();
        one.candidate().component().getRuins().forEach(other -> book.named(other).ifPresent(all::add));
        book.causes().forEach((address, cause) -> {
            if (cause.getCausedBy().stream().anyMatch(by -> book.named(by)
                    .filter(named -> named.address().equals(one.candidate().address())).isPresent())) {
                all.add(new Named(address, MachineBook.title(cause)));
            }
        });
        return List.copyOf(all);
    }
}
