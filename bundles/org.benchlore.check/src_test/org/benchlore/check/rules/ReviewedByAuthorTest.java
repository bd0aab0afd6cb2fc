// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Person;

class ReviewedByAuthorTest extends Mirror {

    ReviewedByAuthorTest() {
        super("reviewed-by-author", "procedures/renew-pto-actuator.xmi",
                b -> b.procedure().setReviewer(Spoil.to(Literals.PERSON, Person.class, "shop.xmi#jory-pask")),
                "renew-pto-actuator",
                b -> b.procedure().setReviewer(Spoil.to(Literals.PERSON, Person.class, "shop.xmi#tamsin-orle")));
    }
}
