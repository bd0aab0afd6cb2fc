// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

/** What hits can be narrowed by and counted by. */
public enum Facet {
    /** The kind's word, such as {@code note}. */
    KIND,
    /** A machine's id. Narrowing keeps what names no machine. */
    MACHINE,
    /** Title of an uppermost component of a machine. */
    SYSTEM,
    /** A literal of the status of its kind, such as {@code HELD}. */
    STATUS,
    /** Four digits. */
    YEAR;

    /** Name of the index's field. */
    String field() {
        return "by" + name().charAt(0) + name().substring(1).toLowerCase(java.util.Locale.ROOT);
    }
}
