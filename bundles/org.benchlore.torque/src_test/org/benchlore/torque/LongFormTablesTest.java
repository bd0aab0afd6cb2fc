// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.stream.Stream;

import org.benchlore.measure.MeasureUnits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Preload and torque at 90 % of yield against tables. A pair must agree to its printed precision or the given share. */
class LongFormTablesTest {

    private static final double PRELOAD_SHARE = 0.005;
    private static final double TORQUE_SHARE = 0.015;

    /**
     * Published: VDI 2230:2001 values, mastik.pt catalogue, p. 685. Thread, friction, preload in kN and torque in N·m
     * for 8.8/10.9/12.9.
     */
    private static final String FINE = """
            M8×1 0.10 20.7/30.4/35.6 22.8/33.5/39.2
            M8×1 0.12 20.2/29.7/34.7 26.1/38.3/44.9
            M8×1 0.14 19.7/28.9/33.9 29.2/42.8/50.1
            M10×1.25 0.10 32.4/47.5/55.6 44/65/76
            M10×1.25 0.12 31.6/46.4/54.3 51/75/87
            M10×1.25 0.14 30.8/45.2/52.9 57/83/98
            M12×1.25 0.10 49.1/72.1/84.4 79/116/135
            M12×1.25 0.12 48.0/70.5/82.5 90/133/155
            M12×1.25 0.14 46.8/68.7/80.4 101/149/174
            M14×1.5 0.10 66.4/97.5/114.1 124/182/213
            M14×1.5 0.12 64.8/95.2/111.4 142/209/244
            M14×1.5 0.14 63.2/92.9/108.7 159/234/274
            M16×1.5 0.10 89.6/131.6/154.0 189/278/325
            M16×1.5 0.12 87.6/128.7/150.6 218/320/374
            M16×1.5 0.14 85.5/125.5/146.9 244/359/420
            M18×1.5 0.10 120/171/200 283/403/472
            M18×1.5 0.12 117/167/196 327/465/544
            M18×1.5 0.14 115/163/191 368/523/613
            M20×1.5 0.10 151/215/252 392/558/653
            M20×1.5 0.12 148/211/246 454/646/756
            M20×1.5 0.14 144/206/241 511/728/852
            M22×1.5 0.10 186/264/309 529/754/882
            M22×1.5 0.12 182/259/303 613/873/1022
            M22×1.5 0.14 178/253/296 692/985/1153
            M24×2 0.10 213/304/355 666/949/1110
            M24×2 0.12 209/297/348 769/1095/1282
            M24×2 0.14 204/290/339 865/1232/1442""";

    /** From memory: VDI 2230-1, Table A1; of it one cell published (M12, 8.8, 0.14: 41.9 kN, bossard.com). */
    private static final String COARSE = """
            M5 0.10 7.4/10.8/12.7 5.2/7.6/8.9
            M5 0.12 7.2/10.6/12.4 5.9/8.6/10.0
            M5 0.14 7.0/10.3/12.0 6.5/9.5/11.2
            M6 0.10 10.4/15.3/17.9 9.0/13.2/15.4
            M6 0.12 10.2/14.9/17.5 10.1/14.9/17.4
            M6 0.14 9.9/14.6/17.0 11.3/16.5/19.3
            M8 0.10 19.1/28.0/32.8 21.6/31.8/37.2
            M8 0.12 18.6/27.3/32.0 24.6/36.1/42.2
            M8 0.14 18.1/26.6/31.1 27.3/40.1/46.9
            M10 0.10 30.3/44.5/52.1 43/63/73
            M10 0.12 29.6/43.4/50.8 48/71/83
            M10 0.14 28.8/42.2/49.4 54/79/93
            M12 0.10 44.1/64.8/75.9 73/108/126
            M12 0.12 43.0/63.2/74.0 84/123/144
            M12 0.14 41.9/61.5/72.0 93/137/160
            M14 0.10 60.6/88.9/104.1 117/172/201
            M14 0.12 59.1/86.7/101.5 133/195/229
            M14 0.14 57.5/84.4/98.8 148/218/255
            M16 0.10 82.9/121.7/142.4 180/264/309
            M16 0.12 80.9/118.8/139.0 206/302/354
            M16 0.14 78.8/115.7/135.4 230/338/395
            M18 0.10 104/149/174 259/369/432
            M18 0.12 102/145/170 295/421/492
            M18 0.14 99/141/165 329/469/549
            M20 0.10 134/190/223 363/517/605
            M20 0.12 130/186/217 415/592/692
            M20 0.14 127/181/212 464/661/773
            M22 0.10 166/237/277 495/704/824
            M22 0.12 162/231/271 567/807/945
            M22 0.14 158/225/264 634/904/1057
            M24 0.10 192/274/320 625/890/1041
            M24 0.12 188/267/313 714/1017/1190
            M24 0.14 183/260/305 798/1136/1329""";

    /** One pair of a table. */
    record Pair(String thread, String name, double friction, BigDecimal kilonewtons, BigDecimal newtonMetres) {

        Tightening calculated() {
            return Joint.of(BoltThread.parse(thread), PropertyClass.parse(name), Friction.both(friction)).tighten(0.9);
        }
    }

    private static Stream<Pair> pairs(String table) {
        return table.lines().map(line -> line.strip().split(" ")).flatMap(words -> Stream.of(0, 1, 2).map(i -> new Pair(
                words[0], new String[] {"8.8", "10.9", "12.9"}[i], Double.parseDouble(words[1]),
                new BigDecimal(words[2].split("/")[i]), new BigDecimal(words[3].split("/")[i]))));
    }

    static Stream<Pair> fine() {
        return pairs(FINE);
    }

    static Stream<Pair> coarse() {
        return pairs(COARSE);
    }

    @ParameterizedTest
    @MethodSource({"fine", "coarse"})
    void preloadAgreesWithTheTable(Pair pair) {
        assertAgrees(pair.kilonewtons(), pair.calculated().preload().in(MeasureUnits.KILONEWTON), PRELOAD_SHARE);
    }

    @ParameterizedTest
    @MethodSource({"fine", "coarse"})
    void torqueAgreesWithTheTable(Pair pair) {
        assertAgrees(pair.newtonMetres(), pair.calculated().torque().in(MeasureUnits.NEWTON_METRE), TORQUE_SHARE);
    }

    @ParameterizedTest
    @CsvSource({"fine, 81", "coarse, 99"})
    void theTablesAreWhole(String name, int size) {
        assertEquals(size, (name.equals("fine") ? fine() : coarse()).count());
    }

    /**
     * Older tables (VDI 2230:1986 level) lie about 8 % lower and must not be met: torque at friction 0.14 from a machine's
     * manual (DIN 13-13), preload and torque at 0.10 from scribd 138461434.
     */
    @ParameterizedTest
    @CsvSource({"M8, 8.8, 0.14, 25", "M10, 8.8, 0.14, 49", "M12, 10.9, 0.14, 125", "M16, 12.9, 0.14, 365",
        "M20, 10.9, 0.14, 610", "M24, 8.8, 0.14, 730", "M8, 10.9, 0.10, 28", "M12, 8.8, 0.10, 69",
        "M16, 12.9, 0.10, 285"})
    void olderTablesAreNotMixedIn(String thread, String name, double friction, double older) {
        double now = Joint.of(BoltThread.parse(thread), PropertyClass.parse(name), Friction.both(friction)).tighten(0.9)
                .torque().in(MeasureUnits.NEWTON_METRE);
        assertTrue(now > older * 1.04 && now < older * 1.16, now + " against the older " + older);
    }

    /**
     * Published: mastik.pt, p. 686, stainless at 90 %; kN and N·m for classes 50/70/80. The table cuts its digits instead of
     * rounding them (6.27 kN stands as 6.2), so one printed digit is allowed.
     */
    @ParameterizedTest
    @CsvSource({"M8, 0.1, 6.2/13.4/17.9, 7.1/15.2/20.3", "M8, 0.2, 5.4/11.6/15.5, 11.2/24.1/32.1",
        "M10, 0.1, 9.9/21.3/28.4, 14/30/39", "M10, 0.2, 8.6/18.5/24.7, 22.2/47.7/63"})
    void stainlessAgreesWithTheTable(String thread, double friction, String forces, String torques) {
        var names = new String[] {"50", "70", "80"};
        for (int i = 0; i < names.length; i++) {
            var pair = new Pair(thread, names[i], friction, new BigDecimal(forces.split("/")[i]),
                    new BigDecimal(torques.split("/")[i]));
            assertCut(pair.kilonewtons(), pair.calculated().preload().in(MeasureUnits.KILONEWTON));
            assertCut(pair.newtonMetres(), pair.calculated().torque().in(MeasureUnits.NEWTON_METRE));
        }
    }

    private static void assertCut(BigDecimal printed, double calculated) {
        double digit = printed.ulp().doubleValue();
        assertEquals(printed.doubleValue() + digit / 2, calculated, Math.max(digit, 0.005 * calculated));
    }

    private static void assertAgrees(BigDecimal printed, double calculated, double share) {
        double halfDigit = printed.ulp().doubleValue() / 2;
        assertEquals(printed.doubleValue(), calculated, Math.max(halfDigit, share * printed.doubleValue()) + 1e-9);
    }
}
