// SPDX-License-Identifier: EPL-2.0
/** One plan for all that is to be done, picked by search, planned again at every change; job card and start of the job. */
package org.benchlore.ui.plan;
