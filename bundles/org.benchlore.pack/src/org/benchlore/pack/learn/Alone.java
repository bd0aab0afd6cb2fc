// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.model.Component;
import org.benchlore.model.Procedure;
import org.benchlore.model.Qualification;
import org.benchlore.model.Signal;
import org.benchlore.model.Skill;
import org.benchlore.model.Way;
import org.benchlore.model.Work;
import org.benchlore.model.YesNo;
import org.benchlore.page.Labels;
import org.benchlore.store.Library;

/** Says why a learner may not do a procedure alone. */
final class Alone {

    private final Library library;

    Alone(Library library) {
        this.library = library;
    }

    List<String> reasons(Procedure procedure) {
        var works = procedure.getWays().stream().map(Way::getWork).filter(Objects::nonNull).toList();
        var found = new ArrayList<String>();
        works.stream().flatMap(work -> work.getQualifications().stream()).distinct()
                .filter(it -> it != Qualification.NONE && it != Qualification.NOT_RECORDED)
                .forEach(it -> found.add("local rules may ask for a qualification: " + Labels.of(it)));
        people(works).filter(most -> most > 1).ifPresent(most -> found.add("it takes " + most + " people"));
        skill(procedure, works).ifPresent(skill -> found.add("it is for a " + Labels.of(skill)));
        if (hazards(works).anyMatch(Signal.DANGER::equals)) {
            found.add("it has a hazard marked DANGER");
        }
        library.resolve(procedure.getComponent()).filter(Component.class::isInstance).map(Component.class::cast)
                .filter(component -> component.getSafetyCritical() == YesNo.YES)
                .ifPresent(component -> found.add("a failure of this component can hurt somebody"));
        return found;
    }

    private static Optional<Integer> people(List<Work> works) {
        return works.stream().map(Work::getPeople).filter(Objects::nonNull).max(Integer::compare);
    }

    private static Optional<Skill> skill(Procedure procedure, List<Work> works) {
        return Stream.concat(Stream.of(procedure.getSkill()), works.stream().map(Work::getSkill)).filter(Objects::nonNull)
                .max(Skill::compareTo).filter(skill -> skill.compareTo(Skill.APPRENTICE) > 0);
    }

    private static Stream<Signal> hazards(List<Work> works) {
        return works.stream().flatMap(work -> Stream.concat(work.getHazards().stream(),
                work.getSteps().stream().flatMap(step -> step.getHazards().stream()))).map(hazard -> hazard.getSignal());
    }
}
