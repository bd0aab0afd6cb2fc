// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.torque.wrench.Choice;
import org.benchlore.torque.wrench.Wrench;
import org.benchlore.torque.wrench.WrenchKind;
import org.benchlore.torque.wrench.WrenchRack;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopWrenchesTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    Path home;

    private Path folder;

    @BeforeEach
    void copyTheDemonstration() throws IOException {
        folder = home.resolve("library");
        var from = Path.of(System.getProperty("benchlore.root"), "procedures");
        try (var files = Files.walk(from)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var target = folder.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }

    private void change(String file, String old, String changed) throws IOException {
        var text = Files.readString(folder.resolve(file));
        assertTrue(text.contains(old), file + " has no " + old);
        Files.writeString(folder.resolve(file), text.replace(old, changed));
    }

    private WrenchRack rack() throws Exception {
        try (var open = new Workshop(Places.below(home.resolve("user"))).open(folder, Use.LOOK_UP,
                new NullProgressMonitor())) {
            return new ShopWrenches(open.library()).rack();
        }
    }

    private Wrench named(String part) throws Exception {
        return rack().wrenches().stream().filter(wrench -> wrench.name().contains(part)).findFirst().orElseThrow();
    }

    @Test
    void onlyToolsWithARangeOfTorqueAreWrenches() throws Exception {
        assertEquals(List.of("5 N·m", "20 N·m", "60 N·m", "200 N·m"),
                rack().wrenches().stream().map(wrench -> wrench.lowest().toString()).toList());
        var wrench = named("W-2100-1");
        assertEquals("100 N·m", wrench.highest().toString());
        assertEquals(Optional.of(LocalDate.of(2027, 6, 8)), wrench.due());
        assertTrue(wrench.name().startsWith("Torque wrench 20 to 100 N·m, W-2100-1 (") && wrench.name().contains("hook 4"),
                wrench.name());
        assertEquals(WrenchKind.SETTING, wrench.kind());
    }

    @Test
    void withoutADayTheShopsOwnRuleCountsFromTheLastCalibration() throws Exception {
        change("shop.xmi", "        calibrationDue=\"2027-03-16\"\n", "");
        assertEquals(Optional.of(LocalDate.of(2027, 3, 16)), named("W-6032-1").due());
        change("shop.xmi", "calibrationMonths=\"12\"", "calibrationMonths=\"6\"");
        assertEquals(Optional.of(LocalDate.of(2026, 9, 16)), named("W-6032-1").due());
    }

    @Test
    void usesAboveTheRuleTakeAWrenchOffTheWall() throws Exception {
        change("shop.xmi", "uses=\"1850\"", "uses=\"5000\"");
        var choice = rack().choose(80, TODAY).stream().filter(one -> one.wrench().name().contains("W-2100-1")).findFirst();
        assertEquals(Choice.Fit.USED_UP, choice.orElseThrow().fit());
        assertEquals("W-6032-1", rack().choose(80, TODAY).get(0).wrench().name().replaceAll(".*, (W-[0-9-]+) .*", "$1"));
    }

    @Test
    void withoutAnyDayNothingIsKnown() throws Exception {
        change("shop.xmi", "        calibratedOn=\"2026-03-16\"\n        calibrationDue=\"2027-03-16\"\n", "");
        assertEquals(Optional.empty(), named("W-6032-1").due());
    }

    @Test
    void aScrewdriverIsToldByItsName() throws Exception {
        change("tools/torque-wrench-5-25.xmi", "title=\"Torque wrench 5 to 25 N·m\"", "title=\"Torque screwdriver\"");
        assertEquals(WrenchKind.SCREWDRIVER, named("W-0525-2").kind());
    }

    @Test
    void aToolWithHalfARangeIsLeftOut() throws Exception {
        change("tools/torque-wrench-5-25.xmi", "    rangeFrom=\"5 N·m\"\n", "");
        assertEquals(List.of("20 N·m", "60 N·m", "200 N·m"),
                rack().wrenches().stream().map(wrench -> wrench.lowest().toString()).toList());
    }

    private Optional<String> problem(String wrench, double newtonMetres) throws Exception {
        try (var open = new Workshop(Places.below(home.resolve("user"))).open(folder, Use.LOOK_UP,
                new NullProgressMonitor())) {
            var held = new ShopWrenches(open.library()).held();
            return held.stream().filter(one -> one.wrench().name().contains(wrench)).findFirst().orElseThrow()
                    .problem(newtonMetres, LocalDate.of(2026, 11, 25), held);
        }
    }

    @Test
    void aWrenchThatFitsIsTaken() throws Exception {
        assertEquals(Optional.empty(), problem("W-2100-1", 45));
    }

    @Test
    void oneWhoseCalibrationIsOverIsRefusedAndAnotherNamed() throws Exception {
        change("shop.xmi", "calibrationDue=\"2027-03-16\"", "calibrationDue=\"2026-03-16\"");
        var refused = problem("W-6032-1", 75).orElseThrow();
        assertTrue(refused.contains("ended on 2026-03-16; have it calibrated first") && refused.contains("Take Torque wrench 20 to 100"),
                refused);
    }

    @Test
    void whereNoWrenchFitsThatIsSaid() throws Exception {
        assertTrue(problem("W-2100-1", 8000).orElseThrow().endsWith("No wrench of the shop fits."));
    }

    @Test
    void aWrenchIsKnownByItsPlaceInTheShopsFile() throws Exception {
        try (var open = new Workshop(Places.below(home.resolve("user"))).open(folder, Use.LOOK_UP,
                new NullProgressMonitor())) {
            var first = new ShopWrenches(open.library()).held().get(0);
            assertEquals("shop.xmi#holding-x8z9 torque-wrench-5-25", first.holding().orElseThrow() + " " + first.tool().id());
        }
    }
}
