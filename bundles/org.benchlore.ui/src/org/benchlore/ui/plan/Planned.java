// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.Map;
import java.util.Optional;

import org.benchlore.page.Page;
import org.benchlore.plan.Plan;
import org.eclipse.swt.graphics.ImageData;

/**
 * What came of a question, ready to be shown.
 *
 * @param lines what stands in the form
 * @param plan the plan, if there is one
 * @param main the plan's page, or what to do instead
 * @param picture page with the picture of the accesses
 * @param card page of the job card
 * @param images pictures of the job card by file
 */
record Planned(FormLines lines, Optional<Plan> plan, Page main, Page picture, Page card, Map<String, ImageData> images) {
}
