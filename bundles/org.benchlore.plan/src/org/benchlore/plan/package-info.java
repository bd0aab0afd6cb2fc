// SPDX-License-Identifier: EPL-2.0
/** One plan for all that is to be done on a machine, from where it stands: order, time, lists and price. */
package org.benchlore.plan;
