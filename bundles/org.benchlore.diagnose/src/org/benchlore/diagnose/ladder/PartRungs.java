// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.diagnose.Named;
import org.benchlore.diagnose.RankedCause;
import org.benchlore.diagnose.book.CaseInHand;
import org.benchlore.diagnose.book.Chains;
import org.benchlore.diagnose.book.WorkDone;
import org.benchlore.diagnose.ladder.Item.State;
import org.benchlore.model.Address;
import org.benchlore.model.Part;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Library;

/** The rungs of old and of new parts. */
final class PartRungs {

    private final CaseInHand now;
    private final Library library;
    private final WorkDone work;
    private final List<RankedCause> causes;

    PartRungs(CaseInHand now, WorkDone work, List<RankedCause> causes) {
        this.now = now;
        this.library = now.book().library();
        this.work = work;
        this.causes = causes;
    }

    /** Members of the chain that were not renewed, the likeliest cause first. */
    List<Item> oldParts() {
        return now.failing().map(function -> new Chains(now.book(), now.words()).chain(function, Optional.of(work),
                List.of()).members().stream().filter(member -> !member.renewed()).map(member -> member.component())
                .sorted(Comparator.comparingDouble((Named part) -> -cause(part).map(RankedCause::chance).orElse(0.0)))
                .map(this::oldPart).toList()).orElse(List.of());
    }

    private Optional<RankedCause> cause(Named component) {
        return causes.stream().filter(cause -> cause.component().address().equals(component.address())).findFirst();
    }

    private Item oldPart(Named part) {
        var cause = cause(part);
        var details = new ArrayList<String>();
        cause.ifPresent(one -> details.add(one.title()));
        left(part.address()).ifPresent(details::add);
        told(part, details);
        var points = now.answered().stream().anyMatch(one -> one.outcome().points().stream().anyMatch(causes(part)::contains));
        var clears = now.answered().stream().anyMatch(one -> one.outcome().against().stream().anyMatch(causes(part)::contains));
        return new Item(points ? State.BAD : clears ? State.GOOD : State.OPEN, part.title(), String.join("; ", details),
                Optional.of(part.address()));
    }

    private void told(Named part, List<String> details) {
        now.answered().stream().filter(one -> one.outcome().points().stream().anyMatch(causes(part)::contains)
                || one.outcome().against().stream().anyMatch(causes(part)::contains))
                .forEach(one -> details.add(one.shown()));
    }

    private Set<Address> causes(Named part) {
        var component = now.book().components().get(part.address());
        var found = new HashSet<Address>();
        component.getCauses().forEach(cause -> library.addressOf(cause).ifPresent(found::add));
        return found;
    }

    private Optional<String> left(Address component) {
        return work.job().flatMap(job -> job.getLeft().stream().filter(left -> library.addressOf(left.getComponent())
                .filter(component::equals).isPresent()).findFirst())
                .map(left -> "left in place" + (left.getText() == null ? "" : ": " + left.getText()));
    }

    /** Every new part stays on the list: a new part can be the wrong one, or bad. */
    List<Item> newParts() {
        var items = new ArrayList<Item>();
        fitted().forEach(part -> items.add(new Item(State.OPEN, ElementTitle.of(part), doubt(part), library.addressOf(part))));
        work.renewed().stream().sorted().map(now.book().components()::get).filter(java.util.Objects::nonNull)
                .flatMap(component -> now.book().named(component).stream())
                .forEach(part -> items.add(new Item(State.OPEN, part.title(),
                        "new: compare its number, measure it as if it were old" + removed(part.address()),
                        Optional.of(part.address()))));
        return List.copyOf(items);
    }

    private String removed(Address component) {
        return work.rounds().stream().flatMap(round -> round.getRemoved().stream())
                .filter(one -> one.getCondition() != null && library.addressOf(one.getComponent()).filter(component::equals)
                        .isPresent())
                .map(one -> "; the old one: " + one.getCondition().strip()).findFirst().orElse("");
    }

    private List<Part> fitted() {
        return work.rounds().stream().flatMap(round -> round.getDone().stream())
                .flatMap(done -> done.getFitted().stream()).flatMap(part -> library.resolve(part).stream())
                .filter(Part.class::isInstance).map(Part.class::cast).distinct().toList();
    }

    private String doubt(Part part) {
        if (part.getSupersededBy() != null) {
            return "this number is superseded by " + library.resolve(part.getSupersededBy())
                    .filter(Part.class::isInstance).map(other -> ElementTitle.of((Part) other)).orElse("another");
        }
        var own = library.addressOf(part);
        var listed = now.book().components().values().stream().anyMatch(component -> component.getParts().stream()
                .anyMatch(other -> library.addressOf(other).equals(own)));
        return listed ? "fitted; the book lists this number" : "fitted; the book lists this number for no component of this machine";
    }
}
