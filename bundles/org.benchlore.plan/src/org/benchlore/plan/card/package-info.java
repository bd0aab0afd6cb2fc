// SPDX-License-Identifier: EPL-2.0
/** The card of a job that goes on: planned round by round from what the record says, with what is filled in so far. */
package org.benchlore.plan.card;
