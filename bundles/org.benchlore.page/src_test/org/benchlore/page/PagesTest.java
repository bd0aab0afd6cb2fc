// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.benchlore.model.BookFactory;
import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.page.Block.Heading;
import org.benchlore.page.Block.Table;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every kind of element, from empty to full of references that lead to nothing. */
class PagesTest {

    @TempDir
    Path folder;

    private static TopElement create(Kind kind) {
        return (TopElement) BookFactory.eINSTANCE.create(kind.type());
    }

    private Page page(TopElement element) {
        return new Pages(new TestBook(folder).library()).of(element);
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void anElementWithNothingButAnIdIsShownUnderItsId(Kind kind) {
        var element = create(kind);
        element.setId(TopIds.of(kind.type()));
        var page = page(element);
        assertEquals(new Heading(1, element.getId()), page.blocks().get(0));
        assertTrue(new TextRenderer(80).render(page).startsWith(element.getId()));
        assertTrue(new HtmlRenderer().render(page).contains("<h1>" + element.getId() + "</h1>"));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void anElementWithNothingAtAllIsShown(Kind kind) {
        assertEquals(Texts.UNTITLED, page(create(kind)).title());
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyFeatureFilledWithHostileTextIsShownHarmlessly(Kind kind) {
        var html = new HtmlRenderer().render(page((TopElement) new Filler().fill(create(kind))));
        assertTrue(html.contains("&lt;script&gt;"));
        assertFalse(html.contains("<script"));
        assertFalse(html.contains("\u009b"));
    }

    @ParameterizedTest
    @EnumSource(value = Kind.class, names = "GLOSSARY", mode = EnumSource.Mode.EXCLUDE)
    void aReferenceToNothingIsShownWithItsId(Kind kind) {
        var text = new TextRenderer(400).render(page((TopElement) new Filler().fill(create(kind))));
        assertTrue(text.contains("nowhere (not in this library)"), text);
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void noLineIsLongerThanTheTerminal(Kind kind) {
        var page = page((TopElement) new Filler().fill(create(kind)));
        for (int width : new int[] {TextRenderer.NARROWEST, 40, 80, 132}) {
            var longest = new TextRenderer(width).render(page).lines().mapToInt(Wrapping::width).max().orElse(0);
            assertTrue(longest <= width, longest + " > " + width);
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyRowOfATableIsAsLongAsItsHeader(Kind kind) {
        page((TopElement) new Filler().fill(create(kind))).blocks().stream().filter(Table.class::isInstance)
                .map(Table.class::cast)
                .forEach(table -> table.rows().forEach(row -> assertEquals(table.header().size(), row.size())));
    }
}
