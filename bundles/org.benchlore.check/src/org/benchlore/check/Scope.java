// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

/** How far a rule looks, and so what must be checked again after a change. */
public enum Scope {
    /** The file alone. */
    ELEMENT,
    /** The file and the elements it refers to. */
    NEIGHBOURS,
    /** The facts of the whole library, without loading files. */
    LIBRARY
}
