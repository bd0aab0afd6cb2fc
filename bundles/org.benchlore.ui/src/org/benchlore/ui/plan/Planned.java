// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.page.Page;
import org.benchlore.plan.Plan;
import org.eclipse.swt.graphics.ImageData;

/**
 * What came of a question, ready to be shown.
 *
 * @param subject title of the unit or machine, empty words if none is picked
 * @param work procedures that were picked
 * @param accesses what can be open already
 * @param doable what can be done already
 * @param plan the plan, if there is one
 * @param main the plan's page, or what to do instead
 * @param picture page with the picture of the accesses
 * @param card page of the job card
 * @param images pictures of the job card by file
 */
record Planned(String subject, List<Line> work, List<Line> accesses, List<Line> doable, Optional<Plan> plan, Page main,
        Page picture, Page card, Map<String, ImageData> images) {
}
