// SPDX-License-Identifier: EPL-2.0
/** The order in which the fasteners of a place are tightened and loosened. */
package org.benchlore.torque.sequence;
