// SPDX-License-Identifier: EPL-2.0
/**
 * Whether something is worth adding while a machine is open: numbers in, a verdict out. It knows no library and no
 * plan; whoever has them gives the times, prices and counts.
 */
package org.benchlore.evidence.decide;
