// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.References;
import org.benchlore.model.Address;
import org.benchlore.model.Answer;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.model.Procedure;
import org.benchlore.model.RoundKind;
import org.benchlore.plan.JobStart;
import org.benchlore.plan.PlanRequest;
import org.benchlore.ui.Ids;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Job records are found in their list and filled in by the card: lines, rounds, what was left in, the end. */
class JobsTest extends EditorTest {

    private static final String JOB = "job-2026-pack-lorry-21-aaaa";
    private static final String FILE = "jobs/2026/" + JOB + ".xmi";
    private static final String ACTUATOR = "renew-pto-actuator";

    @AfterEach
    void hide() {
        var view = EditDriver.page().findView(Ids.JOBS_VIEW);
        if (view != null) {
            EditDriver.page().hideView(view);
        }
    }

    /** The pack's job on lorry 21 as a plan begins it; the customer has accepted the actuator if the teach-in fails. */
    private void begin() throws Exception {
        var opened = LibraryCopy.session().current().orElseThrow().library();
        var plan = opened.planner().plan(new PlanRequest("lorry-21", List.of("renew-pto-clutch-pack"), List.of(), List.of(),
                LocalDate.of(2026, 11, 25), Optional.empty()));
        var job = JobStart.of(opened.library(), plan, JOB);
        var round = BookFactory.eINSTANCE.createRound();
        round.setId("round-1");
        round.setKind(RoundKind.STRIP);
        round.setDate(LocalDate.of(2026, 11, 25));
        round.getPlanned().add(procedure("renew-pto-clutch-pack"));
        job.getRounds().add(round);
        var offer = BookFactory.eINSTANCE.createOffer();
        offer.setProcedure(procedure(ACTUATOR));
        offer.setAnswer(Answer.ACCEPTED);
        job.getOffers().add(offer);
        opened.library().save(job, Optional.empty());
        LibraryCopy.session().refresh();
        window.waitUntil("the job is known", () -> opened.library().catalogue().byId(JOB).isPresent());
    }

    private static Procedure procedure(String id) {
        return (Procedure) References.to(Literals.PROCEDURE, new Address("procedures/" + id + ".xmi", id));
    }

    private Table list() throws Exception {
        EditDriver.page().showView(Ids.JOBS_VIEW);
        var table = window.find("jobs.table", Table.class);
        window.waitUntil("jobs are listed", () -> table.getItemCount() > 0);
        return table;
    }

    private JobRecord saved() {
        return (JobRecord) LibraryCopy.session().current().orElseThrow().library().library().top(JOB).orElseThrow();
    }

    private Tree card() {
        return window.find("job.tree", Tree.class);
    }

    private TreeItem line(String words) {
        return lines().stream().filter(item -> item.getText().contains(words)).findFirst().orElse(null);
    }

    private List<TreeItem> lines() {
        var all = new ArrayList<TreeItem>();
        for (var item : card().getItems()) {
            all.add(item);
            all.addAll(Arrays.asList(item.getItems()));
        }
        return all;
    }

    private long ticked() {
        return lines().stream().filter(item -> item.getText().startsWith("\u2713")).count();
    }

    private void select(String words) {
        window.waitUntil("the card has " + words, () -> line(words) != null);
        var event = new Event();
        event.item = line(words);
        card().setSelection(line(words));
        card().notifyListeners(SWT.Selection, event);
        window.workFor(150);
    }

    private void press(String id) {
        window.find(id, Button.class).notifyListeners(SWT.Selection, new Event());
        window.workFor(100);
    }

    private void choose(String id, String words) {
        var combo = window.find(id, Combo.class);
        int at = Arrays.stream(combo.getItems()).map(String::toLowerCase).toList()
                .indexOf(Arrays.stream(combo.getItems()).map(String::toLowerCase).filter(one -> one.startsWith(words))
                        .findFirst().orElseThrow());
        combo.select(at);
        combo.notifyListeners(SWT.Selection, new Event());
        window.workFor(100);
    }

    private void round(String kind, String words) {
        edit.whenThere("job.round.kind", () -> {
            choose("job.round.kind", kind);
            window.find("job.round.text", Text.class).setText(words);
            window.screenshot("job-round");
            press("job.round.begin");
        });
        press("job.round");
        window.workFor(300);
    }

    @Test
    void theListSaysWhereEachJobStandsAndIsNarrowedByWords() throws Exception {
        begin();
        var table = list();
        window.waitUntil("the new job is listed", () -> row(table).isPresent());
        var next = row(table).orElseThrow().getText(5);
        assertTrue(next.contains("(0 of "), next);
        window.screenshot("jobs");
        int open = table.getItemCount();
        choose("jobs.which", "handed back");
        window.waitUntil("closed jobs are shown", () -> table.getItemCount() > 100 && row(table).isEmpty());
        choose("jobs.which", "all");
        window.waitUntil("all are shown", () -> table.getItemCount() > 100 + open);
        window.find("jobs.filter", Text.class).setText("zzz nothing");
        window.waitUntil("nothing fits", () -> table.getItemCount() == 0);
        assertTrue(window.find("jobs.said", Label.class).getText().startsWith("No job fits"));
        window.find("jobs.filter", Text.class).setText("");
    }

    private static Optional<TableItem> row(Table table) {
        return Arrays.stream(table.getItems()).filter(item -> item.getText(1).contains("21")
                && item.getText(0).toLowerCase().contains("clutch pack")).findFirst();
    }

    @Test
    void enterOpensTheCardAtItsNextLineAndATickIsTakenBack() throws Exception {
        begin();
        var table = list();
        window.waitUntil("the new job is listed", () -> row(table).isPresent());
        table.setSelection(row(table).orElseThrow());
        window.focus(table);
        window.press(SWT.CR);
        window.find("job.tick", Button.class);
        assertEquals(0, ticked());
        var minutes = window.find("job.minutes", Text.class);
        edit.focus(minutes);
        window.type("abc");
        window.press(SWT.CR, SWT.CTRL);
        assertEquals(0, ticked(), "minutes that are none tick nothing");
        edit.write("job.minutes", "17");
        window.press(SWT.CR, SWT.CTRL);
        window.waitUntil("the line is ticked", () -> ticked() == 1);
        window.screenshot("job-card");
        window.pressLetter('z', SWT.CTRL);
        window.waitUntil("the tick is taken back", () -> ticked() == 0);
        window.pressLetter('z', SWT.CTRL, SWT.SHIFT);
        window.waitUntil("it is there again", () -> ticked() == 1);
        edit.save();
        assertEquals(1, saved().getRounds().get(0).getDone().size());
        assertTrue(Files.readString(library.file(FILE)).contains("17"));
    }

    /** Pack, teach-in fails, apart again for the actuator, handed back: every step by the card, one file at the end. */
    @Test
    void aJobOfTwoStripsIsPlayedThroughToItsEnd() throws Exception {
        begin();
        edit.open(FILE, JOB);
        choose("job.who", "jory");
        select("Renew the clutch pack");
        press("job.tick");
        window.waitUntil("the pack is ticked", () -> ticked() == 1);
        select("Left in place");
        press("job.proposeLeft");
        window.waitUntil("the actuator is to be confirmed", () -> window.has("job.confirm.pto-actuator"));
        press("job.confirm.pto-actuator");
        window.waitUntil("it is confirmed", () -> !window.has("job.confirm.pto-actuator"));
        window.screenshot("job-left");

        round("teach-in failed", "teach-in stops with 4C17");
        round("strip again", "apart again for the actuator");
        select("Renew the engagement actuator");
        press("job.tick");
        window.waitUntil("the actuator is ticked", () -> ticked() == 2);
        window.screenshot("job-two-rounds");

        edit.whenThere("job.close.do", () -> {
            window.screenshot("job-close");
            press("job.close.do");
        });
        choose("job.state", "closed");
        window.workFor(200);
        edit.save();
        check(saved());
        window.waitUntil("the list shows it as handed back", () -> LibraryCopy.session().current().orElseThrow().library()
                .library().catalogue().byId(JOB).orElseThrow().status().equals("CLOSED"));
    }

    private static void check(JobRecord job) {
        assertEquals(JobState.CLOSED, job.getState());
        assertFalse(job.getClosed() == null);
        assertEquals(List.of(RoundKind.STRIP, RoundKind.TEACH_IN_FAILED, RoundKind.STRIP_AGAIN),
                job.getRounds().stream().map(round -> round.getKind()).toList());
        assertEquals(1, job.getRounds().get(2).getDone().size());
        assertTrue(job.getLeft().stream().anyMatch(left -> left.getConfirmedBy() != null));
    }
}
