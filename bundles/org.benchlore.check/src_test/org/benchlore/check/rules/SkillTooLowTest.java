// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Skill;

class SkillTooLowTest extends Mirror {

    SkillTooLowTest() {
        super("skill-too-low", "procedures/renew-pto-actuator.xmi",
                b -> b.procedure().setSkill(Skill.APPRENTICE),
                "renew-pto-actuator",
                b -> b.procedure().setSkill(Skill.SPECIALIST));
    }
}
