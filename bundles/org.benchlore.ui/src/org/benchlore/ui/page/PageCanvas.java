// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.page.Page;
import org.benchlore.ui.Ids;
import org.benchlore.ui.look.Palette;
import org.benchlore.ui.page.text.PageText;
import org.benchlore.ui.page.text.PageWriter;
import org.benchlore.ui.page.text.Style;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Composite;

/** Shows a page in one read-only text widget and lays it out anew when its width, size or colours change. */
public final class PageCanvas {

    private static final int MARGIN = 14;
    private static final int RESIZE_PAUSE = 120;
    private static final int LEAST_WIDTH = 120;
    /** Longer lines are hard to read; in characters of usual width. */
    private static final int MOST_CHARACTERS = 115;

    private final StyledText text;
    private final PageColours colours;
    private final PageLinks links;
    private final Pictures pictures;
    private final Runnable layOut = this::layOut;
    private PageFonts fonts;
    private Page page = new Page("", List.of());
    private PageText shown = new PageText("", List.of(), List.of(), List.of(), List.of(), List.of());
    private int width;

    /**
     * Makes an empty page.
     *
     * @param parent holds it
     * @param id of the widget, for tests
     * @param zoom size in per cent
     * @param opener opens what a link leads to
     */
    public PageCanvas(Composite parent, String id, int zoom, Consumer<Address> opener) {
        text = new StyledText(parent, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
        text.setData(Ids.WIDGET_ID, id);
        text.setData("org.eclipse.e4.ui.css.id", "benchlore-page");
        text.setMargins(MARGIN, 0, MARGIN, 0);
        var palette = new Palette();
        colours = new PageColours(palette);
        fonts = new PageFonts(text, zoom);
        links = new PageLinks(text, opener);
        pictures = new Pictures(text);
        var painter = new PagePainter(text, colours);
        text.addPaintListener(event -> painter.paint(event.gc, shown));
        text.addListener(SWT.Resize, event -> resized());
        palette.onChange(text, layOut);
    }

    /**
     * Returns the widget.
     *
     * @return a read-only text
     */
    public StyledText control() {
        return text;
    }

    PageText shown() {
        return shown;
    }

    /**
     * Shows a page in place of the one before.
     *
     * @param next the page
     * @param images its pictures by file
     */
    public void show(Page next, Map<String, ImageData> images) {
        page = next;
        pictures.use(images);
        layOut();
    }

    /**
     * Shows the page in another size.
     *
     * @param percent size in per cent
     */
    public void zoom(int percent) {
        var old = fonts;
        fonts = new PageFonts(text, percent);
        layOut();
        old.dispose();
    }

    private void resized() {
        if (text.getClientArea().width != width) {
            text.getDisplay().timerExec(RESIZE_PAUSE, layOut);
        }
    }

    private void layOut() {
        if (text.isDisposed()) {
            return;
        }
        width = text.getClientArea().width;
        int room = Math.max(LEAST_WIDTH, width - 2 * MARGIN - 2);
        try (var ruler = new GcRuler(text, fonts, room, MOST_CHARACTERS)) {
            text.setRightMargin(width - MARGIN - ruler.pageWidth() - 2);
            apply(new PageWriter(ruler).write(page), ruler.pageWidth());
        }
    }

    private void apply(PageText next, int inner) {
        int top = text.getTopPixel();
        var selection = text.getSelection();
        var same = next.text().equals(shown.text());
        text.setRedraw(false);
        shown = next;
        links.show(next);
        text.setFont(fonts.get(Style.BODY));
        text.setText(next.text());
        text.setStyleRanges(ranges(next));
        for (int i = 0; i < next.lines().size(); i++) {
            line(i, next.lines().get(i));
        }
        pictures.place(next, inner);
        if (same) {
            text.setSelection(selection);
        }
        text.setTopPixel(same ? top : 0);
        text.setRedraw(true);
    }

    private StyleRange[] ranges(PageText next) {
        return next.runs().stream().map(run -> range(next, run)).toArray(StyleRange[]::new);
    }

    private StyleRange range(PageText next, PageText.Run run) {
        var fill = next.lines().get(text.getLineAtOffset(run.start())).fill();
        var range = new StyleRange(run.start(), run.length(), colours.words(run.style(), fill), null);
        range.font = fonts.get(run.style());
        range.underline = run.style() == Style.LINK;
        return range;
    }

    private void line(int index, PageText.Line line) {
        text.setLineBackground(index, 1, colours.behind(line.fill()));
        text.setLineIndent(index, 1, line.indent());
        text.setLineWrapIndent(index, 1, line.wrapIndent());
        text.setLineVerticalIndent(index, line.above());
        text.setLineTabStops(index, 1, line.tabs().isEmpty() ? null : line.tabs().stream().mapToInt(i -> i).toArray());
    }

    /** Scrolls to words, in a heading where they are found in one. */
    void reveal(String words) {
        var inHeading = shown.runs().stream().filter(run -> run.style() != Style.LINK && run.style() != Style.BODY)
                .filter(run -> shown.text().startsWith(words, run.start())).map(PageText.Run::start).findFirst();
        int at = inHeading.or(() -> Optional.of(shown.text().indexOf(words))).get();
        if (at > 0) {
            text.setSelection(at, at + words.length());
            text.setTopIndex(Math.max(0, text.getLineAtOffset(at) - 1));
        }
    }
}
