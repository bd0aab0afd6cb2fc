// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.access;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Access;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Machine;
import org.benchlore.model.Need;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * Says which accesses an access cannot name: those that can only be opened when it is open itself, and those that must
 * not be open with it. A need that has another alternative may lead back; an alternative that always does may not.
 */
public final class AccessRules {

    private AccessRules() {
    }

    /**
     * Says why an access cannot be named in a field.
     *
     * @param owner an access, or one of the needs of an access; for any other owner there is nothing to say
     * @param field needs, covers or notWith of an access, or anyOf of a need
     * @param named the access to be named, of the same machine
     * @return a plain sentence, or empty if it can
     */
    public static Optional<String> problem(EObject owner, EReference field, Access named) {
        var access = owner instanceof Need ? owner.eContainer() : owner;
        if (!(access instanceof Access one) || field.getEReferenceType() != Literals.ACCESS) {
            return Optional.empty();
        }
        if (one == named) {
            return Optional.of("'" + title(one) + "' names itself here: take another access");
        }
        return field == Literals.NEED__ANY_OF ? need(one, named)
                : field == Literals.ACCESS__NOT_WITH ? notWith(one, named) : Optional.empty();
    }

    /**
     * Says what is wrong with the accesses that stand in a field now.
     *
     * @param owner an access, or one of the needs of an access
     * @param field a field that names accesses
     * @return a plain sentence of the first that cannot stand there, or empty
     */
    public static Optional<String> problem(EObject owner, EReference field) {
        if (field.getEReferenceType() != Literals.ACCESS || field.isContainment()) {
            return Optional.empty();
        }
        return ((List<?>) owner.eGet(field, false)).stream().filter(Access.class::isInstance).map(Access.class::cast)
                .filter(named -> !named.eIsProxy()).map(named -> problem(owner, field, named))
                .flatMap(Optional::stream).findFirst();
    }

    private static Optional<String> need(Access access, Access needed) {
        if (access.getNotWith().contains(needed) || needed.getNotWith().contains(access)) {
            return Optional.of("'" + title(needed) + "' must not be open together with '" + title(access)
                    + "', so it cannot be needed for it: change one of the two");
        }
        return openable(access).contains(needed) ? Optional.empty()
                : Optional.of("'" + title(needed) + "' can only be opened when '" + title(access)
                        + "' is open: the need would go round in a circle; take another access");
    }

    private static Optional<String> notWith(Access access, Access other) {
        boolean needed = access.getNeeds().stream().anyMatch(need -> need.getAnyOf().contains(other))
                || other.getNeeds().stream().anyMatch(need -> need.getAnyOf().contains(access));
        return needed ? Optional.of("One of '" + title(access) + "' and '" + title(other)
                + "' needs the other, so they must be open together: change the need first") : Optional.empty();
    }

    /** What can be opened one after the other while an access stays shut. What stands in other files counts as open. */
    private static Set<Access> openable(Access shut) {
        var open = new HashSet<Access>();
        if (!(shut.eContainer() instanceof Machine machine)) {
            return open;
        }
        int before;
        do {
            before = open.size();
            machine.getAccesses().stream().filter(access -> access != shut && isReady(access, open))
                    .forEach(open::add);
        } while (open.size() > before);
        return open;
    }

    private static boolean isReady(Access access, Set<Access> open) {
        return access.getNeeds().stream().allMatch(need -> need.getAnyOf().isEmpty()
                || need.getAnyOf().stream().anyMatch(one -> one.eIsProxy() || open.contains(one)));
    }

    static String title(Access access) {
        return access.getTitle() == null || access.getTitle().isBlank() ? String.valueOf(access.getId())
                : access.getTitle();
    }
}
