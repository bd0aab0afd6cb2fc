// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.Locale;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Skill;
import org.benchlore.model.Way;

/** A procedure asks for at least the skill of its works. */
final class SkillTooLow extends ElementRule {

    SkillTooLow() {
        super(new About("skill-too-low", Severity.WARNING,
                "A procedure asks for at least the skill of its works",
                "The shop gives it to an apprentice and finds out in the middle."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        subject.procedure().ifPresent(procedure -> procedure.getWays().stream().map(Way::getWork)
                .filter(work -> work != null && work.getSkill().compareTo(procedure.getSkill()) > 0).findFirst()
                .ifPresent(work -> findings.add(procedure, "The procedure asks for '" + word(procedure.getSkill()) + "', its work '"
                        + Works.shorten(work.getTitle()) + "' for '" + word(work.getSkill()) + "': ask for the higher one",
                        "Ask for the higher skill", (session, element) ->
                                session.edits().value(element, Literals.PROCEDURE__SKILL, work.getSkill()))));
    }

    private static String word(Skill skill) {
        return skill.getLiteral().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
