// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.benchlore.page.TestBook.MAKE;
import static org.benchlore.page.TestBook.inner;
import static org.benchlore.page.TestBook.named;
import static org.benchlore.page.TestBook.to;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Machine;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** References and typed links in texts. */
class LinksTest {

    private static final Address LIFTER = new Address("machines/lifter.xmi", "lifter");
    private static final Address CYLINDER = new Address("machines/lifter.xmi", "cylinder");

    @TempDir
    Path folder;

    private final FieldNote note = named(MAKE.createFieldNote(), "note-2026-a", "A");

    private Links links() {
        var shop = named(MAKE.createShop(), "shop", "Shop");
        shop.getPeople().add(inner(MAKE.createPerson(), "jory", "Jory Pask"));
        var library = new TestBook(folder).add(machine()).add(shop).write("parts/broken.xmi", "no XML").library();
        return new Links(library, note);
    }

    private static Machine machine() {
        var machine = named(MAKE.createMachine(), "lifter", "Lifter");
        machine.getComponents().add(inner(MAKE.createComponent(), "cylinder", "Cylinder"));
        return machine;
    }

    @Test
    void aReferenceToAWholeFileBecomesALinkWithItsTitle() {
        assertEquals(List.of(new Span.Link("Lifter", LIFTER)), links().to(to(MAKE.createMachine(), "lifter")));
    }

    @Test
    void aReferenceIntoAFileBecomesALinkWithTheInnerTitle() {
        assertEquals(List.of(new Span.Link("Cylinder", CYLINDER)),
                links().to(to(MAKE.createComponent(), "machines/lifter.xmi", "cylinder")));
    }

    @Test
    void aPersonIsShownAsWords() {
        assertEquals(Spans.of("Jory Pask"), links().to(to(MAKE.createPerson(), "shop.xmi", "jory")));
    }

    @Test
    void noReferenceIsShownAsNothing() {
        assertEquals(List.of(), links().to(note.getMachine()));
    }

    @Test
    void aMissingInnerElementIsShownWithItsId() {
        assertEquals(Spans.of("gone (not in this library)"),
                links().to(to(MAKE.createComponent(), "machines/lifter.xmi", "gone")));
    }

    @Test
    void aReferenceIntoAFileThatCannotBeReadSaysSo() {
        assertEquals(Spans.of("broken (its file cannot be read)"), links().to(to(MAKE.createPart(), "broken")));
    }

    @Test
    void aReferenceOutOfTheLibraryIsNotFollowed() {
        var stray = MAKE.createPart();
        ((InternalEObject) stray).eSetProxyURI(URI.createURI("file:/etc/hosts#x"));
        assertEquals(Spans.of("x (not in this library)"), links().to(stray));
    }

    @Test
    void aTextsLinksBecomeLinksAndTheRestStays() {
        assertEquals(List.of(Span.of("Look at "), new Span.Link("Cylinder", CYLINDER), Span.of(" of "),
                new Span.Link("Lifter", LIFTER), Span.of(", {sic: this} {}.")),
                links().text("Look at {component:cylinder} of {machine:lifter}, {sic: this} {}.", note));
    }

    @Test
    void aTextsLinkToNothingIsShownWithItsId() {
        assertEquals("Take gone (not in this library).", links().plain("Take {part:gone}.", note));
    }

    @Test
    void aCopyThatLiesInNoFileLinksToWhereItWillStand() {
        var copy = EcoreUtil.copy(machine());
        assertEquals(LIFTER, links().address(copy).orElseThrow());
        assertEquals(List.of(new Span.Link("Cylinder", CYLINDER)), links().to(copy.getComponents().get(0)));
    }
}
