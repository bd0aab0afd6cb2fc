// SPDX-License-Identifier: EPL-2.0
/** Threads, property classes, preload and torque, and the judging of a stated torque. Pure Java: mm, MPa, N, N·m. */
package org.benchlore.torque;
