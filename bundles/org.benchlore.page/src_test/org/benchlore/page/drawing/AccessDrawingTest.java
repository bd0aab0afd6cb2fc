// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.Planner;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AccessDrawingTest {

    @TempDir
    Path cache;

    private Drawing drawing(List<String> open) throws Exception {
        try (var library = Library.open(Path.of(System.getProperty("benchlore.root"), "procedures"), cache,
                new NullProgressMonitor())) {
            return AccessDrawing.of(new Planner(library).plan(new PlanRequest("dravholm-hl26",
                    List.of("renew-pto-clutch-pack"), open, List.of(), LocalDate.of(2026, 11, 25), Optional.empty())));
        }
    }

    @Test
    void itSaysWhatIsOpenedWhatComesFreeAndWhatIsStillPossible() throws Exception {
        var words = drawing(List.of()).description();
        assertTrue(words.contains("Container set down and lorry clear of it: opened, turn 1"), words);
        assertTrue(words.contains("Actuator and its bolts within reach: comes free"), words);
        assertTrue(words.contains("Hook arm raised and propped: could be opened besides"), words);
        assertTrue(drawing(List.of("pto-unit-out")).description().contains("Take-off unit out: open already"), words);
    }

    @Test
    void itIsReadInBlackAndWhite() throws Exception {
        var svg = drawing(List.of()).svg();
        var colours = Pattern.compile("#[0-9a-f]{6}").matcher(svg).results().map(it -> it.group()).collect(Collectors.toSet());
        assertEquals(java.util.Set.of("#000000", "#ffffff"), colours);
        assertTrue(svg.contains(">Invented for demonstration: not for use on a real machine"), svg);
        assertTrue(svg.contains("stroke-width=\"3.5\"") && svg.contains("stroke-dasharray"), svg);
    }

    @Test
    void everyFrameLiesWithinTheDrawing() throws Exception {
        var drawing = drawing(List.of());
        drawing.shapes().stream().filter(Shape.Box.class::isInstance).map(Shape.Box.class::cast).forEach(box -> assertTrue(
                box.x() >= 0 && box.y() >= 0 && box.x() + box.width() <= drawing.width()
                        && box.y() + box.height() <= drawing.height(), box.toString()));
    }
}
