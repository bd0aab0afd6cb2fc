// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.card;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.DoneWork;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Procedure;
import org.benchlore.model.Round;
import org.benchlore.model.RoundKind;
import org.benchlore.model.Unit;
import org.benchlore.plan.KnownLibrary;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.Planner;
import org.benchlore.plan.card.CardLine.Task;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryUris;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** A job on lorry 21 of a copy of the demonstration library, ticked as a person would; invented like the rest of it. */
final class CardBook implements AutoCloseable {

    static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final String MACHINE = "machines/dravholm-hl26.xmi";

    final Library library;
    final Cards cards;
    final JobRecord job = BookFactory.eINSTANCE.createJobRecord();

    CardBook(Path folder) throws Exception {
        KnownLibrary.copy(folder.resolve("library"), folder.resolve("cache"));
        library = Library.open(folder.resolve("library"), folder.resolve("cache"), new NullProgressMonitor());
        cards = new Cards(library, new Planner(library));
        job.setId("job-2026-pack-lorry-21-aaaa");
        job.setOpened(DAY);
        job.setUnit((Unit) to(Literals.UNIT, new Address("units/lorry-21.xmi", "lorry-21")));
    }

    static EObject to(EClass type, Address address) {
        var reference = EcoreUtil.create(type);
        ((InternalEObject) reference).eSetProxyURI(LibraryUris.of(address.path()).appendFragment(address.id()));
        return reference;
    }

    static Address inMachine(String id) {
        return new Address(MACHINE, id);
    }

    static Procedure procedure(String id) {
        return (Procedure) to(Literals.PROCEDURE, new Address("procedures/" + id + ".xmi", id));
    }

    Round round(RoundKind kind, String... planned) {
        var round = BookFactory.eINSTANCE.createRound();
        round.setKind(kind);
        round.setDate(DAY);
        List.of(planned).forEach(id -> round.getPlanned().add(procedure(id)));
        job.getRounds().add(round);
        return round;
    }

    List<Card> planned() {
        return cards.plan(cards.requests(job, DAY));
    }

    List<Task> tasks(int round) {
        return CardLines.of(library, planned().get(round), job.getRounds().get(round)).stream().filter(Task.class::isInstance)
                .map(Task.class::cast).toList();
    }

    /** Ticks the lines of a round until one of them, without it. */
    void tickUntil(int round, String id) {
        for (var task : tasks(round)) {
            if (task.place().id().equals(id)) {
                return;
            }
            tick(round, task);
        }
    }

    void tick(int round, Task task) {
        var done = entry(task);
        job.getRounds().get(round).getDone().add(done);
        if (task.part() == Part.STRIP) {
            job.getRounds().get(round).getOpened().add((Access) to(Literals.ACCESS, task.place()));
        }
    }

    private static DoneWork entry(Task task) {
        var done = BookFactory.eINSTANCE.createDoneWork();
        switch (task.part()) {
            case STRIP -> done.setOpened((Access) to(Literals.ACCESS, task.place()));
            case REFIT -> done.setClosed((Access) to(Literals.ACCESS, task.place()));
            default -> done.setProcedure((Procedure) to(Literals.PROCEDURE, task.place()));
        }
        task.renewed().forEach(it -> done.getRenewed().add((org.benchlore.model.Component) to(Literals.COMPONENT, it)));
        return done;
    }

    Optional<String> next() {
        return Progress.of(library, job, planned()).next();
    }

    @Override
    public void close() {
        library.close();
    }
}
