// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.benchlore.model.Address;
import org.benchlore.model.Cause;
import org.benchlore.model.Component;
import org.benchlore.model.FieldNote;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Machine;
import org.benchlore.model.Part;
import org.benchlore.model.RoundKind;
import org.benchlore.model.TopElement;
import org.benchlore.model.Unit;
import org.benchlore.store.KindFacts.JobFacts;
import org.benchlore.store.KindFacts.Left;
import org.benchlore.store.KindFacts.Life;
import org.benchlore.store.KindFacts.MachineFacts;
import org.benchlore.store.KindFacts.NoteFacts;
import org.benchlore.store.KindFacts.PartFacts;
import org.benchlore.store.KindFacts.Renewal;
import org.benchlore.store.KindFacts.Sighting;
import org.benchlore.store.KindFacts.Tally;
import org.benchlore.store.KindFacts.UnitFacts;
import org.eclipse.emf.ecore.EObject;

/** Draws the facts that only one kind has out of an element. */
final class KindFactsReader {

    private final Function<EObject, Optional<Address>> target;

    /** Takes what tells where a reference leads. */
    KindFactsReader(Function<EObject, Optional<Address>> target) {
        this.target = target;
    }

    Optional<KindFacts> read(TopElement top) {
        if (top instanceof JobRecord job) {
            return Optional.of(job(job));
        }
        if (top instanceof FieldNote note) {
            return Optional.of(new NoteFacts(to(note.getUnit()), to(note.getComponent()), to(note.getJob()), tally(note)));
        }
        if (top instanceof Machine machine) {
            return Optional.of(machine(machine));
        }
        if (top instanceof Part part) {
            return Optional.of(new PartFacts(to(part.getSupersededBy()), life(part)));
        }
        return top instanceof Unit unit ? Optional.of(new UnitFacts(number(unit.getKeptUntil()))) : Optional.empty();
    }

    private Optional<Address> to(EObject reference) {
        return target.apply(reference);
    }

    private List<Address> all(List<? extends EObject> references) {
        return references.stream().map(this::to).flatMap(Optional::stream).toList();
    }

    private static int number(Integer value) {
        return value == null ? 0 : value;
    }

    private JobFacts job(JobRecord job) {
        var done = new LinkedHashSet<Address>();
        job.getRounds().forEach(round -> round.getDone().forEach(work ->
                to(work.getProcedure()).ifPresent(done::add)));
        var left = new ArrayList<Left>();
        job.getLeft().forEach(old -> to(old.getComponent()).ifPresent(component ->
                left.add(new Left(component, to(old.getPart()), old.getConfirmedBy() != null))));
        return new JobFacts(to(job.getUnit()), List.copyOf(done), renewals(job), List.copyOf(left),
                all(job.getFailed()), job.getMeter() == null ? "" : job.getMeter().toString(),
                Optional.ofNullable(job.getClosed()), to(job.getComebackOf()), job.getComebackReason().toString());
    }

    private List<Renewal> renewals(JobRecord job) {
        var renewals = new ArrayList<Renewal>();
        for (var round : job.getRounds()) {
            boolean again = round.getKind() == RoundKind.STRIP_AGAIN;
            for (var work : round.getDone()) {
                var fitted = all(work.getFitted());
                all(work.getRenewed()).forEach(component -> renewals.add(new Renewal(component, fitted, again)));
            }
        }
        return List.copyOf(renewals);
    }

    private Optional<Tally> tally(FieldNote note) {
        var seen = note.getSeen();
        return seen == null ? Optional.empty() : Optional.of(new Tally(
                Math.max(number(seen.getCount()), seen.getSightings().size()), number(seen.getOfAbout()),
                number(seen.getSince()), seen.getSightings().stream().map(one -> new Sighting(to(one.getUnit()),
                        Optional.ofNullable(one.getDate()))).toList()));
    }

    private MachineFacts machine(Machine machine) {
        var causes = new HashMap<String, String>();
        var parts = new HashMap<String, List<Address>>();
        machine.eAllContents().forEachRemaining(object -> {
            if (object instanceof Cause cause && cause.eContainer() instanceof Component component) {
                put(causes, cause.getId(), component.getId());
            } else if (object instanceof Component component && !component.getParts().isEmpty()) {
                put(parts, component.getId(), all(component.getParts()));
            }
        });
        return new MachineFacts(machine.getFamily() == null ? "" : machine.getFamily(), Map.copyOf(causes),
                Map.copyOf(parts));
    }

    /** What has no id cannot be referred to. */
    private static <T> void put(Map<String, T> map, String key, T value) {
        if (key != null && value != null) {
            map.put(key, value);
        }
    }

    private static Optional<Life> life(Part part) {
        var life = part.getLife();
        return life == null || life.getShape() == null || life.getScale() == null ? Optional.empty()
                : Optional.of(new Life(life.getShape(), life.getScale().toString()));
    }
}
