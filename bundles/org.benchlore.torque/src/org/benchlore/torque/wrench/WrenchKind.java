// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

/** Hand torque tools as ISO 6789-1:2017 parts them. */
public enum WrenchKind {
    /** Type I: shows what it gives. */
    INDICATING,
    /** Type II: is set and signals. */
    SETTING,
    /** Screwdriver of either type. */
    SCREWDRIVER
}
