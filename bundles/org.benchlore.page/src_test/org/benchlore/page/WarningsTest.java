// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.benchlore.page.TestBook.MAKE;
import static org.benchlore.page.TestBook.named;
import static org.benchlore.page.TestBook.to;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.Procedure;
import org.benchlore.model.Source;
import org.benchlore.model.Status;
import org.benchlore.page.Block.Paragraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What must be known before an element is read. */
class WarningsTest {

    @TempDir
    Path folder;

    private static Procedure procedure(String id, Status status) {
        var procedure = named(MAKE.createProcedure(), id, "Title of " + id);
        procedure.setStatus(status);
        return procedure;
    }

    private List<String> banners(TestBook book, String id) {
        return TestBook.banners(book.page(id));
    }

    @Test
    void demonstrationDataSaysSoFirst() {
        var tool = named(MAKE.createTool(), "press", "Press");
        tool.setInvented(true);
        assertEquals(List.of("INVENTED Invented for demonstration: not for use on a real machine."),
                banners(new TestBook(folder).add(tool), "press"));
    }

    @Test
    void aWithdrawnProcedureStopsTheReaderAndNamesItsReplacement() {
        var old = procedure("old", Status.WITHDRAWN);
        old.setWithdrawnReason("Wrong torque.");
        old.setReplacedBy(to(MAKE.createProcedure(), "new"));
        var page = new TestBook(folder).add(old).add(procedure("new", Status.REVIEWED)).page("old");
        assertEquals("STOP This procedure is withdrawn: do not follow it. Reason: Wrong torque.",
                TestBook.banners(page).get(0));
        assertEquals(new Paragraph(List.of(Span.strong("Use instead: "),
                new Span.Link("Title of new", new Address("procedures/new.xmi", "new")))), page.blocks().get(2));
    }

    @Test
    void aLinkToAWithdrawnProcedureSaysSo() {
        var other = procedure("other", Status.REVIEWED);
        other.getBefore().add(to(MAKE.createProcedure(), "old"));
        var text = new TestBook(folder).add(other).add(procedure("old", Status.WITHDRAWN)).text("other");
        assertTrue(text.contains("- Title of old (withdrawn) [old]"), text);
    }

    @Test
    void aDraftSaysThatNobodyReviewedIt() {
        assertEquals("ATTENTION Draft: nobody has reviewed this procedure yet.",
                banners(new TestBook(folder).add(procedure("draft", Status.DRAFT)), "draft").get(0));
    }

    @Test
    void aSupersededNoteStopsTheReader() {
        var note = named(MAKE.createFieldNote(), "note-2026-old", "Old");
        note.setStatus(NoteStatus.SUPERSEDED);
        assertEquals(List.of("STOP This field note is superseded: do not follow it."),
                banners(new TestBook(folder).add(note), "note-2026-old"));
    }

    @Test
    void aSupersededDocumentStopsTheReaderAlthoughItsSuccessorIsMissing() {
        var document = named(MAKE.createDocument(), "issue-1", "Issue 1");
        document.setSupersededBy(to(MAKE.createDocument(), "issue-2"));
        var book = new TestBook(folder).add(document);
        assertEquals(List.of("STOP This document is superseded: do not work from it."), banners(book, "issue-1"));
        assertTrue(book.text("issue-1").contains("Use instead: issue-2 (not in this library)"));
    }

    private TestBook withOldIssue() {
        var old = named(MAKE.createDocument(), "issue-1", "Issue 1");
        old.setSupersededBy(to(MAKE.createDocument(), "issue-2"));
        return new TestBook(folder).add(old).add(named(MAKE.createDocument(), "issue-2", "Issue 2"));
    }

    private static Source source(String document) {
        var source = MAKE.createSource();
        source.setDocument(to(MAKE.createDocument(), document));
        return source;
    }

    @Test
    void aProcedureThatCitesASupersededEditionSaysSoAboveAndBesideTheSource() {
        var procedure = procedure("renew", Status.REVIEWED);
        procedure.getSources().add(source("issue-1"));
        procedure.getSources().add(source("issue-2"));
        var book = withOldIssue().add(procedure);
        assertEquals("ATTENTION Cites a superseded document: Issue 1. Compare with the edition in force first.",
                banners(book, "renew").get(0));
        assertTrue(book.text("renew").replaceAll("\\s+", " ").contains("Issue 1 (superseded)"), () -> book.text("renew"));
    }

    @Test
    void aNoteThatCitesASupersededEditionSaysSo() {
        var note = named(MAKE.createFieldNote(), "note-2026-one", "One");
        note.getDocuments().add(to(MAKE.createDocument(), "issue-1"));
        var book = withOldIssue().add(note);
        assertEquals(List.of("ATTENTION Cites a superseded document: Issue 1. Compare with the edition in force first."),
                banners(book, "note-2026-one"));
        assertTrue(book.text("note-2026-one").contains("Issue 1 (superseded)"), () -> book.text("note-2026-one"));
    }

    @Test
    void aTorqueFromASupersededEditionSaysSo() {
        var fastening = MAKE.createFastening();
        fastening.setId("bolts");
        fastening.setPlace("cover bolts");
        fastening.setSource(source("issue-1"));
        var step = MAKE.createStep();
        step.setId("step-one");
        step.getFastenings().add(fastening);
        var way = MAKE.createWay();
        way.setId("way-one");
        way.setWork(MAKE.createWork());
        way.getWork().setId("work-one");
        way.getWork().getSteps().add(step);
        var procedure = procedure("renew", Status.REVIEWED);
        procedure.getWays().add(way);
        var book = withOldIssue().add(procedure);
        assertTrue(banners(book, "renew").get(0).startsWith("ATTENTION Cites a superseded document: Issue 1."));
        assertTrue(book.text("renew").replaceAll("\\s+", " ").contains("Issue 1 (superseded)"), () -> book.text("renew"));
    }

    @Test
    void whatCitesOnlyTheEditionInForceSaysNothingOfIt() {
        var procedure = procedure("renew", Status.REVIEWED);
        procedure.getSources().add(source("issue-2"));
        assertTrue(banners(withOldIssue().add(procedure), "renew").stream().noneMatch(it -> it.contains("superseded")));
    }

    @Test
    void aFileThatCouldNotBeReadWhollySaysWhyItIsReadOnly() {
        var book = new TestBook(folder).write("tools/press.xmi", """
                <?xml version="1.0" encoding="UTF-8"?>
                <!-- a remark -->
                <book:Tool xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI"
                    xmlns:book="urn:benchlore:book:1" id="press" formatVersion="1" title="Press"/>
                """);
        var banners = banners(book, "press");
        assertEquals(1, banners.size());
        assertTrue(banners.get(0).startsWith("ATTENTION read-only: the file has a comment, which saving would drop"));
    }

    @Test
    void aProcedureEndsWithTheStandingCaution() {
        var page = new TestBook(folder).add(procedure("draft", Status.REVIEWED)).page("draft");
        assertEquals(new Block.Banner(Block.Tone.CAUTION, "Check against the manufacturer's data for this machine;"
                + " local rules and a licensed person decide."), page.blocks().get(page.blocks().size() - 1));
    }
}
