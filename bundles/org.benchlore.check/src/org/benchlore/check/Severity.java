// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

/** How grave a problem is. */
public enum Severity {
    /** Somebody can be hurt, a machine damaged or the page not followed: mend it before anybody works by it. */
    ERROR,
    /** Likely wrong or incomplete: mend it, or say why it is right. */
    WARNING
}
