// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.benchlore.ui.look.Appearance;
import org.benchlore.ui.look.Palette;
import org.benchlore.ui.page.PageOpener;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class AppearanceTest {

    /** RAL 2010, ISO 3864-2:2016 as published copies give it. */
    private static final RGB SAFETY_ORANGE = new RGB(0xd0, 0x5d, 0x29);
    private static final double READABLE = 4.5;

    private final WindowDriver window = new WindowDriver();
    private final Appearance appearance = PlatformUI.getWorkbench().getService(Appearance.class);
    private LibraryCopy library;
    private StyledText page;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        var address = LibraryCopy.session().current().orElseThrow().library().library().catalogue()
                .byId("renew-pto-actuator").orElseThrow().address();
        new PageOpener(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), LibraryCopy.session())
                .open(address);
        page = window.find("page.text", StyledText.class);
        window.waitUntil("the page is there", () -> page.getText().contains("WARNING"));
    }

    @AfterEach
    void close() throws Exception {
        appearance.choose(Appearance.Mode.LIGHT);
        library.close();
    }

    private void choose(Appearance.Mode mode, boolean dark) {
        appearance.choose(mode);
        window.waitUntil("the page is " + mode, () -> luminance(page.getBackground()) < 0.2 == dark
                && contrast(wordsAt(0), page.getBackground()) >= READABLE);
    }

    private Color wordsAt(int offset) {
        return page.getStyleRangeAtOffset(offset).foreground;
    }

    /** Relative luminance and contrast after WCAG 2.1, from memory. */
    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static double contrast(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private void everythingIsReadable() {
        for (var range : page.getStyleRanges()) {
            int line = page.getLineAtOffset(range.start);
            var behind = page.getLineBackground(line) == null ? page.getBackground() : page.getLineBackground(line);
            var words = range.foreground == null ? page.getForeground() : range.foreground;
            assertTrue(contrast(words, behind) >= READABLE, () -> page.getLine(line) + ": " + words + " on " + behind);
        }
    }

    private void searchIsReadable() {
        var palette = new Palette();
        assertTrue(contrast(palette.color("MARK_WORDS"), palette.color("MARK")) >= READABLE);
        var hits = new SearchDriver(window).search("teach in");
        assertTrue(contrast(palette.color("LABEL"), hits.getBackground()) >= READABLE);
        var filter = window.find("search.filter.kind", Button.class);
        window.waitUntil("counts are no longer grey", () -> !filter.getForeground().equals(palette.color("LABEL")));
        assertTrue(contrast(filter.getForeground(), hits.getBackground()) >= READABLE);
    }

    @Test
    void wordsAreReadableInTheLightWindow() {
        choose(Appearance.Mode.LIGHT, false);
        everythingIsReadable();
        searchIsReadable();
        window.screenshot("light");
    }

    @Test
    void wordsAreReadableInTheDarkWindow() {
        choose(Appearance.Mode.DARK, true);
        everythingIsReadable();
        searchIsReadable();
        window.screenshot("dark");
        choose(Appearance.Mode.LIGHT, false);
    }

    @Test
    void hazardColoursDoNotFollowTheTheme() {
        choose(Appearance.Mode.DARK, true);
        int line = page.getLineAtOffset(page.getText().indexOf("WARNING"));
        assertEquals(SAFETY_ORANGE, page.getLineBackground(line).getRGB());
        page.setTopIndex(line - 3);
        window.screenshot("dark-hazard");
    }
}
