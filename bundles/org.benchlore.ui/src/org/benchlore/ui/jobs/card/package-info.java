// SPDX-License-Identifier: EPL-2.0
/** The editor of a job record: its card is filled in order, line by line; rounds, parts, answers, the end beside it. */
package org.benchlore.ui.jobs.card;
