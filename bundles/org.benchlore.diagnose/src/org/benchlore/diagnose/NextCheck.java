// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.List;

import org.benchlore.model.Address;

/**
 * A check that can be made now.
 *
 * @param id what an answer names it by
 * @param address the step, or the cause whose own check it is
 * @param procedure the procedure it stands in, or the cause
 * @param text what to do
 * @param results what may be found
 * @param alone minutes with all it must open
 * @param added minutes at its place in the order, what is open by then not counted again
 * @param finds how likely it is to find the cause, if one cause is there
 * @param critical whether it looks at something that can hurt somebody
 * @param opens what must be opened for it
 * @param timed false if its time is not recorded and an usual one was taken
 */
public record NextCheck(String id, Address address, Named procedure, String text, List<Result> results, double alone,
        double added, double finds, boolean critical, List<Named> opens, boolean timed) {

    /**
     * One thing that may be found.
     *
     * @param id what an answer names it by
     * @param answer in words
     * @param points causes it speaks for
     * @param against causes it speaks against
     */
    public record Result(String id, String answer, List<Named> points, List<Named> against) {
    }
}
