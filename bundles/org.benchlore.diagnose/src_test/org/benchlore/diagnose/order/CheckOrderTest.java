// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.junit.jupiter.api.Test;

class CheckOrderTest {

    private static final double EXACT = 1e-9;
    private static final AccessCost FREE = AccessCost.sum(Map.of());

    private static Check check(String id, double minutes, String... opens) {
        return new Check(id, minutes, Set.of(opens), Set.of("fault " + id), false);
    }

    private static List<String> ids(List<Check> order) {
        return order.stream().map(Check::id).toList();
    }

    /** reference-values.md, section 7: test order, brute force over 120 orders. */
    private static CheckOrder reference() {
        var minutes = new double[] {60, 10, 30, 5, 20};
        var chances = new double[] {.35, .25, .20, .15, .05};
        var checks = new ArrayList<Check>();
        var chance = new HashMap<String, Double>();
        for (int i = 0; i < minutes.length; i++) {
            checks.add(check(String.valueOf(i + 1), minutes[i]));
            chance.put("fault " + (i + 1), chances[i]);
        }
        return new CheckOrder(checks, FREE, chance);
    }

    @Test
    void theBestOrderIsThatOfTheReference() {
        var order = reference();
        assertEquals(List.of("4", "2", "3", "1", "5"), ids(order.best()));
        assertEquals(56.5, order.expected(order.best()), EXACT);
    }

    @Test
    void theOrdersThatLookAtOneThingOnlyAreThoseOfTheReference() {
        var order = reference();
        assertEquals(List.of("1", "2", "3", "4", "5"), ids(order.likeliestFirst()));
        assertEquals(80.5, order.expected(order.likeliestFirst()), EXACT);
        assertEquals(List.of("4", "2", "5", "3", "1"), ids(order.shortestFirst()));
        assertEquals(63.0, order.expected(order.shortestFirst()), EXACT);
    }

    private static void permute(List<Check> left, List<Check> sofar, List<List<Check>> all) {
        if (left.isEmpty()) {
            all.add(List.copyOf(sofar));
        }
        for (var check : left) {
            var rest = new ArrayList<>(left);
            rest.remove(check);
            sofar.add(check);
            permute(rest, sofar, all);
            sofar.remove(sofar.size() - 1);
        }
    }

    /** The expected time, written down a second time and from the words: what is still unfound pays for the next. */
    private static double byHand(List<Check> order, Map<String, Double> open, Map<String, Double> chances) {
        var time = 0.0;
        for (int i = 0; i < order.size(); i++) {
            var earlier = order.subList(0, i);
            var costs = order.get(i).minutes();
            for (var name : order.get(i).opens()) {
                costs += earlier.stream().anyMatch(check -> check.opens().contains(name)) ? 0 : open.getOrDefault(name, 0.0);
            }
            var unfound = 1.0;
            for (var fault : chances.keySet()) {
                unfound -= earlier.stream().anyMatch(check -> check.finds().contains(fault)) ? chances.get(fault) : 0;
            }
            time += costs * unfound;
        }
        return time;
    }

    private record Case(List<Check> checks, Map<String, Double> open, Map<String, Double> chances) {

        static Case random(long seed, boolean shared) {
            var random = new Random(seed);
            int size = 1 + random.nextInt(7);
            var open = new HashMap<String, Double>();
            var chances = new HashMap<String, Double>();
            for (int i = 0; shared && i < 3; i++) {
                open.put("cover" + i, 1 + 60 * random.nextDouble());
            }
            var checks = new ArrayList<Check>();
            for (int i = 0; i < size; i++) {
                chances.put("fault" + i, random.nextDouble() / size);
                var opens = open.keySet().stream().filter(name -> random.nextBoolean()).toList();
                var finds = new HashSet<>(List.of("fault" + i));
                if (shared) {
                    finds.add("fault" + random.nextInt(i + 1));
                }
                checks.add(new Check("check" + i, 1 + 30 * random.nextDouble(), Set.copyOf(opens), finds,
                        shared && random.nextInt(5) == 0));
            }
            return new Case(checks, open, chances);
        }

        CheckOrder order() {
            return new CheckOrder(checks, AccessCost.sum(open), chances);
        }

        double leastOfAll() {
            var all = new ArrayList<List<Check>>();
            permute(checks, new ArrayList<>(), all);
            return all.stream().filter(Case::urgentFirst).mapToDouble(order -> byHand(order, open, chances)).min().orElseThrow();
        }

        private static boolean urgentFirst(List<Check> order) {
            var urgent = order.stream().map(Check::urgent).toList();
            return urgent.lastIndexOf(true) < 0 || urgent.indexOf(false) < 0 || urgent.lastIndexOf(true) < urgent.indexOf(false);
        }
    }

    @Test
    void noOrderOfAllIsBetterWithoutSharedOpening() {
        for (long seed = 0; seed < 200; seed++) {
            var one = Case.random(seed, false);
            var order = one.order();
            assertEquals(one.leastOfAll(), order.expected(order.best()), EXACT, "case " + seed);
        }
    }

    @Test
    void noOrderOfAllIsBetterWithSharedOpening() {
        for (long seed = 0; seed < 200; seed++) {
            var one = Case.random(seed, true);
            var order = one.order();
            assertEquals(one.leastOfAll(), order.expected(order.best()), EXACT, "case " + seed);
            assertEquals(byHand(order.best(), one.open(), one.chances()), order.expected(order.best()), EXACT);
        }
    }

    @Test
    void withoutSharedOpeningTheBestOrderIsByChanceOverTime() {
        for (long seed = 0; seed < 50; seed++) {
            var one = Case.random(seed, false);
            var ratios = one.order().best().stream()
                    .map(check -> one.order().chance(check.finds()) / check.minutes()).toList();
            for (int i = 1; i < ratios.size(); i++) {
                assertTrue(ratios.get(i - 1) >= ratios.get(i) - EXACT, "case " + seed);
            }
        }
    }

    @Test
    void theOrderInWhichChecksAreGivenDoesNotMatter() {
        var one = Case.random(7, true);
        var shuffled = new ArrayList<>(one.checks());
        Collections.shuffle(shuffled, new Random(1));
        assertEquals(one.order().best(), new CheckOrder(shuffled, AccessCost.sum(one.open()), one.chances()).best());
    }

    @Test
    void aSharedCoverIsOpenedOnceAndMayPullItsChecksForward() {
        var checks = List.of(check("a", 5, "cover"), check("b", 5, "cover"), check("c", 25));
        var chances = Map.of("fault a", 0.3, "fault b", 0.3, "fault c", 0.25);
        var order = new CheckOrder(checks, AccessCost.sum(Map.of("cover", 30.0)), chances);
        assertEquals(List.of("a", "b", "c"), ids(order.best()));
        assertEquals(List.of(35.0, 5.0, 25.0), order.added(order.best()));
        assertEquals(35.0, order.alone(checks.get(1)), EXACT);
        assertEquals(List.of("c", "a", "b"), ids(order.shortestFirst()));
    }

    @Test
    void whatIsOpenAlreadyCostsNothing() {
        AccessCost standing = wanted -> 40 + (wanted.contains("cover") ? 10 : 0);
        var order = new CheckOrder(List.of(check("a", 5, "cover")), standing, Map.of());
        assertEquals(List.of(15.0), order.added(order.best()));
    }

    @Test
    void anUrgentCheckComesFirstHoweverLongItTakes() {
        var urgent = new Check("urgent", 100, Set.of(), Set.of("brake"), true);
        var order = new CheckOrder(List.of(check("a", 1), urgent), FREE, Map.of("fault a", 0.9, "brake", 0.01));
        assertEquals(List.of("urgent", "a"), ids(order.best()));
    }

    @Test
    void moreChecksThanCanBePutInOrderExactlyAllStandInTheAnswer() {
        var checks = new ArrayList<Check>();
        var chances = new HashMap<String, Double>();
        for (int i = 0; i < CheckOrder.EXACT + 4; i++) {
            checks.add(check(String.format("%02d", i), 10));
            chances.put("fault " + String.format("%02d", i), 0.06 - 0.003 * i);
        }
        var best = new CheckOrder(checks, FREE, chances).best();
        assertEquals(ids(checks), ids(best));
    }

    @Test
    void ofManyChecksThoseWithTheMostChanceForTheirTimeComeFirst() {
        var checks = new ArrayList<Check>();
        var chances = new HashMap<String, Double>();
        var expected = new ArrayList<String>();
        for (int i = 0; i < CheckOrder.EXACT + 4; i++) {
            var id = String.format("%02d", i);
            checks.add(check(id, 40 - i));
            chances.put("fault " + id, 0.05);
            expected.add(0, id);
        }
        assertEquals(expected, ids(new CheckOrder(checks, FREE, chances).best()));
        checks.add(new Check("urgent", 90, Set.of(), Set.of("brake"), true));
        expected.add(0, "urgent");
        assertEquals(expected, ids(new CheckOrder(checks, FREE, chances).best()));
    }

    @Test
    void noChecksMakeAnEmptyOrder() {
        assertEquals(List.of(), new CheckOrder(List.of(), FREE, Map.of()).best());
    }

    @Test
    void aCheckTakesTime() {
        assertThrows(IllegalArgumentException.class, () -> check("a", 0));
    }
}
