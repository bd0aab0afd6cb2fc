// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.JobRecord;
import org.benchlore.plan.adding.Adding;
import org.benchlore.ui.session.Opened;
import org.benchlore.workshop.SheetPhoto;

/**
 * What a customer's sheet is made from.
 *
 * @param opened the library
 * @param adding the plan with what could be added
 * @param job the job it belongs to, if there is one
 * @param photos pictures of that job and of its notes
 * @param advice what was advised in the view, may be empty
 */
record SheetBasis(Opened opened, Adding adding, Optional<JobRecord> job, List<SheetPhoto> photos, String advice) {
}
