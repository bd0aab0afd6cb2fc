// SPDX-License-Identifier: EPL-2.0
/** What is written into a job record while the job goes on: lines of its card, rounds, parts, answers, how it ended. */
package org.benchlore.edit.job;
