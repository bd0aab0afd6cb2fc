// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

/** Something that must hold in a library. Rules keep no state and are used by several threads at once. */
public sealed interface Rule permits ElementRule, NeighbourRule, LibraryRule {

    /** What it is. */
    About about();

    /** How far it looks. */
    Scope scope();

    /** Its id, by which it is suppressed. */
    default String id() {
        return about().id();
    }

    /** How grave its problems are. */
    default Severity severity() {
        return about().severity();
    }

    /** What must be so. */
    default String title() {
        return about().title();
    }

    /** What happens otherwise. */
    default String why() {
        return about().why();
    }
}
