// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.benchlore.model.Access;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Machine;
import org.junit.jupiter.api.Test;

/** Needs never go round in a circle, but may lead back where there is another alternative. */
class AccessRulesTest {

    private final Machine machine = BookFactory.eINSTANCE.createMachine();
    private final Access guard = access("guard off");
    private final Access fan = access("fan out");
    private final Access hopper = access("hopper up");

    private Access access(String title) {
        var access = BookFactory.eINSTANCE.createAccess();
        access.setTitle(title);
        machine.getAccesses().add(access);
        return access;
    }

    private static void need(Access access, Access... anyOf) {
        var need = BookFactory.eINSTANCE.createNeed();
        need.getAnyOf().addAll(java.util.List.of(anyOf));
        access.getNeeds().add(need);
    }

    private static Optional<String> needing(Access access, Access needed) {
        var need = BookFactory.eINSTANCE.createNeed();
        access.getNeeds().add(need);
        return AccessRules.problem(need, Literals.NEED__ANY_OF, needed);
    }

    @Test
    void aFreeAccessCanBeNeeded() {
        assertEquals(Optional.empty(), needing(fan, guard));
    }

    @Test
    void itselfIsRefused() {
        assertEquals("'fan out' names itself here: take another access", needing(fan, fan).orElseThrow());
    }

    @Test
    void aCircleOfTwoIsRefused() {
        need(fan, guard);
        assertEquals("'fan out' can only be opened when 'guard off' is open: the need would go round in a circle;"
                + " take another access", needing(guard, fan).orElseThrow());
    }

    @Test
    void aCircleOfThreeIsRefused() {
        need(fan, guard);
        need(guard, hopper);
        assertTrue(needing(hopper, fan).isPresent());
    }

    @Test
    void whatHasAnotherAlternativeMayLeadBack() {
        need(fan, guard, hopper);
        assertEquals(Optional.empty(), needing(guard, fan));
    }

    @Test
    void twoAlternativesThatBothLeadBackAreRefused() {
        need(fan, guard, hopper);
        need(hopper, guard);
        assertTrue(needing(guard, fan).isPresent());
    }

    @Test
    void whatMustNotBeOpenWithItCannotBeNeeded() {
        hopper.getNotWith().add(fan);
        assertTrue(needing(fan, hopper).orElseThrow().startsWith("'hopper up' must not be open together"));
    }

    @Test
    void whatIsNeededMustBeOpenWithIt() {
        need(fan, guard);
        assertTrue(AccessRules.problem(guard, Literals.ACCESS__NOT_WITH, fan).orElseThrow()
                .startsWith("One of 'guard off' and 'fan out' needs the other"));
    }

    @Test
    void aCircleThatStandsThereIsSaidOfItsFirstAccess() {
        need(fan, guard);
        need(guard, fan);
        assertTrue(AccessRules.problem(fan.getNeeds().get(0), Literals.NEED__ANY_OF).orElseThrow()
                .startsWith("'guard off' can only be opened"));
    }

    @Test
    void theWayOfAProcedureHasNothingToGoRoundIn() {
        var way = BookFactory.eINSTANCE.createWay();
        var need = BookFactory.eINSTANCE.createNeed();
        way.getNeeds().add(need);
        assertEquals(Optional.empty(), AccessRules.problem(need, Literals.NEED__ANY_OF, fan));
    }
}
