// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

/** Where an input stands, so that what is wrong with it can be said beside it. */
public enum Field {
    /** A torque with its unit. */
    TORQUE,
    /** The unit that is wanted. */
    TO_UNIT,
    /** A thread, perhaps with a class beside it. */
    THREAD,
    /** Property class, grade or stainless class. */
    CLASS,
    /** Friction in the thread, and under the head where none stands for that. */
    FRICTION,
    /** Friction under the head. */
    HEAD_FRICTION,
    /** Ring on which the head rubs. */
    BEARING,
    /** Share of the yield stress. */
    USE,
    /** Angles after a torque. */
    ANGLES,
    /** Length of the wrench. */
    LENGTH,
    /** Length of the adapter. */
    OFFSET,
    /** Angle of the adapter. */
    ADAPTER_ANGLE,
    /** How fasteners lie. */
    LAYOUT,
    /** How many, rows and columns, or the order itself. */
    SIZE,
    /** Stages in percent. */
    STAGES
}
