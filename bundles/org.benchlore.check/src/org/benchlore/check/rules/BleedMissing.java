// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.Collection;
import java.util.Optional;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.Text;
import org.benchlore.check.words.TradeWords;
import org.benchlore.model.Access;
import org.benchlore.model.Procedure;
import org.benchlore.model.Work;

/** A line that was opened is bled. */
final class BleedMissing extends NeighbourRule {

    private final TradeWords words;

    BleedMissing(TradeWords words) {
        super(new About("bleed-missing", Severity.ERROR,
                "A line that was opened is bled",
                "Air in the line: the pedal goes down, the actuator stops short.",
                "Matches words for a line, hose or union that is opened, and for bleeding in the same work "
                        + "or in the title of what follows."));
        this.words = words;
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        subject.procedure().ifPresent(procedure -> {
            var bled = bleeds(new Following(neighbours).of(procedure)) || subject.works().stream()
                    .anyMatch(work -> bleeds(subject, work));
            if (!bled) {
                subject.works().forEach(work -> report(subject, work, findings));
            }
        });
        for (var access : subject.all(Access.class)) {
            var after = new Following(neighbours).afterAccess(access).stream()
                    .map(one -> neighbours.follow(one, Procedure.class)).flatMap(Optional::stream).toList();
            boolean bled = bleeds(after) || access.getRefit() != null && bleeds(subject, access.getRefit());
            if (!bled && access.getStrip() != null) {
                report(subject, access.getStrip(), findings);
            }
        }
    }

    private boolean bleeds(Collection<Procedure> following) {
        return following.stream().anyMatch(next -> words.bleeds(Text.of(next.getTitle())));
    }

    private boolean bleeds(Subject subject, Work work) {
        return work.getSteps().stream().anyMatch(step -> words.bleeds(subject.text(step)));
    }

    private void report(Subject subject, Work work, Findings findings) {
        work.getSteps().stream().filter(step -> words.opensLine(subject.text(step))).findFirst().ifPresent(step -> findings.add(step,
                "A line is opened here, but nothing says that it is bled: add the bleeding under 'after closing'"));
    }
}
