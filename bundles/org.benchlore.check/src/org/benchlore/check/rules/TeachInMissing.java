// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.Set;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.Text;
import org.benchlore.check.words.TradeWords;
import org.benchlore.model.Component;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Work;

/** Work on what is taught in ends with the teach-in. */
final class TeachInMissing extends NeighbourRule {

    private final TradeWords words;

    private static final Set<ProcedureKind> KINDS = Set.of(ProcedureKind.RENEW, ProcedureKind.OVERHAUL, ProcedureKind.ADJUST);

    TeachInMissing(TradeWords words) {
        super(new About("teach-in-missing", Severity.ERROR,
                "Work on what is taught in ends with the teach-in",
                "The control unit works with the learned values of the old part.",
                "A component is taught in where one of its functions says so in its title. Only procedures "
                        + "that renew, overhaul or adjust are asked."));
        this.words = words;
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        var own = subject.procedure().filter(procedure -> KINDS.contains(procedure.getKind()) && procedure.getComponent() != null);
        own.flatMap(procedure -> neighbours.follow(procedure.getComponent(), Component.class)).filter(this::isTaughtIn)
                .ifPresent(component -> {
            var procedure = own.get();
            boolean follows = new Following(neighbours).of(procedure).stream()
                    .anyMatch(next -> next.getKind() == ProcedureKind.TEACH_IN);
            if (!follows && Following.works(procedure).stream().noneMatch(work -> teaches(subject, work))) {
                findings.add(procedure, "'" + Works.shorten(component.getTitle())
                        + "' is taught in, but no teach-in follows: add it under "
                        + "'after closing'");
            }
        });
    }

    private boolean isTaughtIn(Component component) {
        return component.getFunctions().stream()
                .anyMatch(function -> !function.eIsProxy() && words.teachesIn(Text.of(function.getTitle())));
    }

    private boolean teaches(Subject subject, Work work) {
        return work.getSteps().stream().anyMatch(step -> words.teachesIn(subject.text(step)));
    }
}
