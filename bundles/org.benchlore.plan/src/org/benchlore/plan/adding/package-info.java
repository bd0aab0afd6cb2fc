// SPDX-License-Identifier: EPL-2.0
/** What is worth adding while a machine is open: candidates from plans, notes and jobs, with every figure behind them. */
package org.benchlore.plan.adding;
