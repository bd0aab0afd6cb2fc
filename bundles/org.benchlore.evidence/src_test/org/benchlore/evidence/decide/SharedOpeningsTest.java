// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.benchlore.evidence.decide.SharedOpenings.Choice;
import org.benchlore.evidence.decide.SharedOpenings.Wish;
import org.junit.jupiter.api.Test;

class SharedOpeningsTest {

    private static BigDecimal money(int amount) {
        return BigDecimal.valueOf(amount);
    }

    private static Wish wish(String id, int extra, int worth, String... openings) {
        return new Wish(id, money(extra), money(worth), Set.of(openings));
    }

    private static Choice choose(List<Wish> wishes, Map<String, BigDecimal> costs) {
        return SharedOpenings.choose(wishes, costs);
    }

    /** Cover off costs 100. Each gains 60 alone: neither pays for the cover, both together do. */
    @Test
    void twoThatDoNotPayAlonePayTogether() {
        var costs = Map.of("cover-off", money(100));
        var seal = wish("seal", 20, 80, "cover-off");
        var bearing = wish("bearing", 40, 100, "cover-off");
        assertEquals(new Choice(List.of(), Set.of(), money(0)), choose(List.of(seal), costs));
        assertEquals(new Choice(List.of(), Set.of(), money(0)), choose(List.of(bearing), costs));
        assertEquals(new Choice(List.of("bearing", "seal"), Set.of("cover-off"), money(20)),
                choose(List.of(seal, bearing), costs));
    }

    @Test
    void whatIsWithinReachNeedsNoOpening() {
        assertEquals(new Choice(List.of("ring"), Set.of(), money(5)), choose(List.of(wish("ring", 5, 10),
                wish("belt", 10, 10)), Map.of()));
    }

    @Test
    void ofEqualGainsFewerAreOpened() {
        assertEquals(new Choice(List.of(), Set.of(), money(0)),
                choose(List.of(wish("seal", 0, 100, "cover-off")), Map.of("cover-off", money(100))));
    }

    @Test
    void everyOpeningHasACostAndThereAreNotTooMany() {
        assertThrows(IllegalArgumentException.class, () -> choose(List.of(wish("x", 1, 2, "a")), Map.of()));
        var costs = new HashMap<String, BigDecimal>();
        var wishes = new ArrayList<Wish>();
        for (int i = 0; i < 17; i++) {
            costs.put("o" + i, money(1));
            wishes.add(wish("w" + i, 0, 2, "o" + i));
        }
        assertThrows(IllegalArgumentException.class, () -> choose(wishes, costs));
        assertEquals(16, choose(wishes.subList(0, 16), costs).chosen().size());
    }

    /** Against trying every set of wishes, which is another way round. Fixed seed. */
    @Test
    void nothingGainsMore() {
        var random = new Random(11);
        for (int round = 0; round < 200; round++) {
            var costs = new HashMap<String, BigDecimal>();
            for (int i = 0; i < 4; i++) {
                costs.put("o" + i, money(random.nextInt(120)));
            }
            var wishes = new ArrayList<Wish>();
            for (int i = 0; i < 7; i++) {
                var openings = new HashSet<String>();
                costs.keySet().stream().filter(any -> random.nextInt(3) == 0).forEach(openings::add);
                wishes.add(new Wish("w" + i, money(random.nextInt(100)), money(random.nextInt(150)), openings));
            }
            assertEquals(0, best(wishes, costs).compareTo(choose(wishes, costs).gain()));
        }
    }

    private static BigDecimal best(List<Wish> wishes, Map<String, BigDecimal> costs) {
        var best = BigDecimal.ZERO;
        for (int bits = 0; bits < 1 << wishes.size(); bits++) {
            var open = new HashSet<String>();
            var gain = BigDecimal.ZERO;
            for (int i = 0; i < wishes.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    open.addAll(wishes.get(i).openings());
                    gain = gain.add(wishes.get(i).worth()).subtract(wishes.get(i).extra());
                }
            }
            best = best.max(open.stream().map(costs::get).reduce(gain, BigDecimal::subtract));
        }
        return best;
    }
}
