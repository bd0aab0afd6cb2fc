// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.chance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FaultModelTest {

    private static final double EXACT = 1e-12;

    /** Chance of every clue together with one set of faults, as the formula of {@link Clue} says. */
    private static double joint(List<Suspect> suspects, List<Clue> clues, int set) {
        var chance = 1.0;
        for (int i = 0; i < suspects.size(); i++) {
            chance *= (set >> i & 1) == 1 ? suspects.get(i).prior() : 1 - suspects.get(i).prior();
        }
        for (var clue : clues) {
            var without = 1 - clue.stray();
            for (int i = 0; i < suspects.size(); i++) {
                if ((set >> i & 1) == 1) {
                    without *= 1 - clue.shows().getOrDefault(suspects.get(i).id(), 0.0);
                    chance *= 1 - clue.denies().getOrDefault(suspects.get(i).id(), 0.0);
                }
            }
            chance *= clue.shows().isEmpty() ? 1 : 1 - without;
        }
        return chance;
    }

    private static Map<String, Double> byEnumeration(List<Suspect> suspects, List<Clue> clues) {
        var sums = new HashMap<String, Double>();
        var all = 0.0;
        for (int set = 0; set < 1 << suspects.size(); set++) {
            var chance = joint(suspects, clues, set);
            all += chance;
            for (int i = 0; i < suspects.size(); i++) {
                sums.merge(suspects.get(i).id(), (set >> i & 1) == 1 ? chance : 0, Double::sum);
            }
        }
        var total = all;
        sums.replaceAll((id, sum) -> sum / total);
        return sums;
    }

    private record Case(List<Suspect> suspects, List<Clue> clues) {

        static Case random(long seed) {
            var random = new Random(seed);
            var suspects = new ArrayList<Suspect>();
            for (int i = 0; i < 1 + random.nextInt(10); i++) {
                suspects.add(new Suspect("fault" + i, 0.001 + 0.5 * random.nextDouble()));
            }
            var clues = new ArrayList<Clue>();
            for (int i = 0; i < random.nextInt(6); i++) {
                clues.add(new Clue("clue" + i, 0.01 + 0.1 * random.nextDouble(), some(suspects, random, 1),
                        some(suspects, random, 0.95)));
            }
            return new Case(suspects, clues);
        }

        private static Map<String, Double> some(List<Suspect> suspects, Random random, double most) {
            var some = new HashMap<String, Double>();
            suspects.stream().filter(suspect -> random.nextInt(3) == 0)
                    .forEach(suspect -> some.put(suspect.id(), most * random.nextDouble()));
            return some;
        }
    }

    @Test
    void theChancesAreThoseOfAllSetsOfFaultsCountedOneByOne() {
        for (long seed = 0; seed < 200; seed++) {
            var one = Case.random(seed);
            var model = new FaultModel(one.suspects(), one.clues());
            var expected = byEnumeration(one.suspects(), one.clues());
            var found = model.posterior();
            assertEquals(expected.keySet(), found.keySet());
            found.forEach((id, chance) -> assertEquals(expected.get(id), chance, EXACT, id));
            var all = 0.0;
            for (int set = 0; set < 1 << one.suspects().size(); set++) {
                all += joint(one.suspects(), one.clues(), set);
            }
            assertEquals(all, model.evidence(), EXACT);
        }
    }

    @Test
    void oneFaultIsAskedForByItself() {
        var one = Case.random(3);
        var model = new FaultModel(one.suspects(), one.clues());
        model.posterior().forEach((id, chance) -> assertEquals(chance, model.posterior(id)));
        assertThrows(IllegalArgumentException.class, () -> model.posterior("nobody"));
    }

    @Test
    void theOrderOfFaultsAndFindingsDoesNotMatter() {
        for (long seed = 0; seed < 50; seed++) {
            var one = Case.random(seed);
            var suspects = new ArrayList<>(one.suspects());
            var clues = new ArrayList<>(one.clues());
            Collections.shuffle(suspects, new Random(seed));
            Collections.shuffle(clues, new Random(seed + 1));
            var other = new FaultModel(suspects, clues).posterior();
            new FaultModel(one.suspects(), one.clues()).posterior()
                    .forEach((id, chance) -> assertEquals(chance, other.get(id), EXACT));
        }
    }

    @Test
    void oneFaultThatIsFoundDoesNotExplainAwayAnIndependentOne() {
        var suspects = List.of(new Suspect("worn", 0.1), new Suspect("wet", 0.05));
        var slow = new Clue("slow", 0.01, Map.of("worn", 0.6), Map.of());
        var jumps = new Clue("jumps", 0.01, Map.of("wet", 0.7), Map.of());
        var measured = new Clue("measured", 0.05, Map.of("worn", 0.9), Map.of());
        var before = new FaultModel(suspects, List.of(slow, jumps)).posterior();
        var after = new FaultModel(suspects, List.of(slow, jumps, measured)).posterior();
        assertTrue(after.get("worn") > before.get("worn"));
        assertEquals(before.get("wet"), after.get("wet"), EXACT);
    }

    @Test
    void aFaultThatAccountsForTheSameFindingIsExplainedAwayInPartOnly() {
        var suspects = List.of(new Suspect("air", 0.1), new Suspect("actuator", 0.1));
        var stops = new Clue("stops", 0.01, Map.of("air", 0.8, "actuator", 0.8), Map.of());
        var bubbles = new Clue("bubbles", 0.01, Map.of("air", 0.9), Map.of());
        var before = new FaultModel(suspects, List.of(stops)).posterior();
        var after = new FaultModel(suspects, List.of(stops, bubbles)).posterior();
        assertTrue(after.get("actuator") < before.get("actuator"));
        assertTrue(after.get("actuator") > 0.1, "still more than before anything was found");
    }

    @Test
    void whatSpeaksAgainstAFaultDividesItsOdds() {
        var after = new FaultModel(List.of(new Suspect("air", 0.5)),
                List.of(new Clue("no bubbles", 1, Map.of(), Map.of("air", 0.9)))).posterior();
        assertEquals(0.1 / 1.1, after.get("air"), EXACT);
    }

    @Test
    void twelveFindingsThatOnlyStrayAccountsForAreStillExact() {
        var clues = new ArrayList<Clue>();
        for (int i = 0; i < FaultModel.MOST_CLUES; i++) {
            clues.add(new Clue("clue" + i, 1e-3, Map.of("fault", 1e-6), Map.of()));
        }
        var with = Math.pow(1 - (1 - 1e-3) * (1 - 1e-6), 12);
        var without = Math.pow(1e-3, 12);
        var chance = new FaultModel(List.of(new Suspect("fault", 0.5)), clues).posterior().get("fault");
        assertEquals(with / (with + without), chance, EXACT);
    }

    @Test
    void moreFindingsThanCanBeWeighedAreRefused() {
        var clues = new ArrayList<Clue>();
        for (int i = 0; i <= FaultModel.MOST_CLUES; i++) {
            clues.add(new Clue("clue" + i, 0.1, Map.of("fault", 0.5), Map.of()));
        }
        var suspects = List.of(new Suspect("fault", 0.5));
        assertThrows(IllegalArgumentException.class, () -> new FaultModel(suspects, clues));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN})
    void aFaultIsNeitherCertainNorImpossible(double prior) {
        assertThrows(IllegalArgumentException.class, () -> new Suspect("fault", prior));
    }

    @Test
    void aCircumstanceMultipliesTheOdds() {
        assertEquals(new Suspect("fault", 0.5).prior(), new Suspect("fault", 0.25).times(3).prior(), EXACT);
    }

    @Test
    void weightsThatAreNoChancesAreRefused() {
        var none = Map.<String, Double>of();
        assertThrows(IllegalArgumentException.class, () -> new Clue("clue", 0, none, none));
        assertThrows(IllegalArgumentException.class, () -> new Clue("clue", 1.01, none, none));
        assertThrows(IllegalArgumentException.class, () -> new Clue("clue", 0.1, Map.of("a", 1.01), none));
        assertThrows(IllegalArgumentException.class, () -> new Clue("clue", 0.1, Map.of("a", -0.01), none));
        assertThrows(IllegalArgumentException.class, () -> new Clue("clue", 0.1, none, Map.of("a", 1.0)));
        assertThrows(IllegalArgumentException.class, () -> new Clue("clue", 0.1, none, Map.of("a", -0.01)));
        assertEquals(1, new Clue("clue", 1, Map.of("a", 1.0), Map.of("a", 0.0)).shows().size());
        assertEquals(0.0, new Clue("clue", 1, Map.of("a", 0.0), none).shows().get("a"));
    }

    /** reference-values.md, section 7: Bayes CALC. */
    @Test
    void bayesRuleGivesTheReferenceValues() {
        assertArrayEquals(new double[] {.135135, .648649, .216216},
                SingleFault.posterior(new double[] {.5, .3, .2}, new double[] {.1, .8, .4}), 5e-7);
    }

    @Test
    void aSingleFaultIsWeighedWithTheSameCluesAsMany() {
        for (long seed = 0; seed < 50; seed++) {
            var one = Case.random(seed);
            var sum = 0.0;
            for (int i = 0; i < one.suspects().size(); i++) {
                sum += joint(one.suspects(), one.clues(), 1 << i);
            }
            var single = SingleFault.posterior(one.suspects(), one.clues());
            for (int i = 0; i < one.suspects().size(); i++) {
                assertEquals(joint(one.suspects(), one.clues(), 1 << i) / sum, single.get(one.suspects().get(i).id()), 1e-9);
            }
        }
    }
}
