// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.Tool;

/**
 * A tool of a plan.
 *
 * @param id its id
 * @param tool the tool, empty if the library does not hold it
 * @param remarks remarks at its uses, such as settings
 * @param places where it hangs; empty if the shop has none
 * @param isDue whether the calibration of every one that hangs there is overdue
 */
public record ToolLine(String id, Optional<Tool> tool, List<String> remarks, List<String> places, boolean isDue) {

    /** Whether the shop has none. */
    public boolean isMissing() {
        return places.isEmpty();
    }
}
