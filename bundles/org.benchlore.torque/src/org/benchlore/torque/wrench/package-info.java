// SPDX-License-Identifier: EPL-2.0
/** Setting, choosing and trusting a torque wrench. */
package org.benchlore.torque.wrench;
