// SPDX-License-Identifier: EPL-2.0
/** The view that converts, calculates and judges torques, sets wrenches and draws sequences. */
package org.benchlore.ui.torque;
