// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.benchlore.edit.References;
import org.benchlore.edit.SaveResult;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Person;
import org.benchlore.model.Procedure;
import org.benchlore.model.Round;
import org.benchlore.model.RoundKind;
import org.benchlore.model.Shop;
import org.benchlore.model.Skill;
import org.benchlore.plan.JobStart;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanItem;
import org.benchlore.store.Hash;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;
import org.eclipse.core.runtime.NullProgressMonitor;

/** Starts a job from a plan by saving its record, and takes that back as long as nobody has changed it. */
public final class PlannedJob {

    private final OpenLibrary opened;

    /**
     * Makes it.
     *
     * @param opened the library that the plan was made from
     */
    public PlannedJob(OpenLibrary opened) {
        this.opened = opened;
    }

    /**
     * Lists who may sign a plan: seniors and specialists who have not left the shop.
     *
     * @return people in the order in which the shop names them
     */
    public List<Person> seniors() {
        return opened.library().top(Kind.SHOP.word()).filter(Shop.class::isInstance).map(Shop.class::cast).stream()
                .flatMap(shop -> shop.getPeople().stream()).filter(person -> person.getLeft() == null
                        && (person.getSkill() == Skill.SENIOR || person.getSkill() == Skill.SPECIALIST)).toList();
    }

    /**
     * Saves a new job record.
     *
     * @param plan a plan for a unit
     * @param senior title of who has looked the strip through, as the person says; empty if nobody has
     * @return the saved file
     * @throws LibraryException if it cannot be saved, in one sentence
     */
    public LoadedFile start(Plan plan, Optional<String> senior) throws LibraryException {
        if (plan.unit().isEmpty()) {
            throw new LibraryException("A job is done on one unit: plan for a unit, not for a machine.");
        }
        var job = record(plan);
        job.getRounds().add(first(plan, senior));
        try (var session = opened.sessions().resume(job, Optional.empty())) {
            if (session.save() instanceof SaveResult.Stopped stopped) {
                throw new LibraryException(stopped.conflict().sentence());
            }
            return session.base().orElseThrow();
        }
    }

    private JobRecord record(Plan plan) throws LibraryException {
        var words = plan.unit().map(unit -> unit.getId()).orElseThrow() + " " + plan.procedures().stream().findFirst()
                .map(procedure -> procedure.getId()).orElse("");
        try (var name = opened.sessions().create(Kind.JOB, words, plan.request().today().getYear())) {
            return JobStart.of(opened.library(), plan, name.element().getId());
        }
    }

    /** What was looked through stands with the name, since the record is read when the plan is gone. */
    private Round first(Plan plan, Optional<String> senior) {
        var round = BookFactory.eINSTANCE.createRound();
        round.setId("round-1");
        round.setKind(RoundKind.STRIP);
        round.setDate(plan.request().today());
        plan.procedures().forEach(procedure -> opened.library().addressOf(procedure).ifPresent(address ->
                round.getPlanned().add((Procedure) References.to(Literals.PROCEDURE, address))));
        senior.ifPresent(name -> round.setText("Looked through before work by " + name + ": " + plan.items().stream()
                .filter(item -> item.proof().isEmpty()).map(PlanItem::title).collect(Collectors.joining("; ")) + "."));
        return round;
    }

    /**
     * Takes a started job out of the library again.
     *
     * @param saved what {@link #start} returned
     * @throws LibraryException if the record was changed since, is being edited, or cannot be deleted
     */
    public void takeBack(LoadedFile saved) throws LibraryException {
        var library = opened.library();
        var file = library.root().resolve(saved.path());
        try {
            if (!Hash.of(Files.readAllBytes(file)).equals(saved.hash()) || opened.sessions().find(saved.path()).isPresent()) {
                throw new LibraryException("The job stays, since its record was changed or is being edited: edit it instead");
            }
            Files.delete(file);
            library.refresh(new NullProgressMonitor());
        } catch (IOException e) {
            throw new LibraryException("The job stays: " + saved.path() + " cannot be deleted; check its permissions", e);
        }
    }
}
