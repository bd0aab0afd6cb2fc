// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.List;

/**
 * All that makes one function work.
 *
 * @param function the function
 * @param text how it works, in short, or empty
 * @param members its components, in the order of the machine
 */
public record FunctionChain(Named function, String text, List<Member> members) {

    /**
     * A component of the chain.
     *
     * @param component the component
     * @param renewed whether the work or a job on record renewed it
     * @param when which work or job, or empty
     * @param causes how it is known to fail, its own causes and those of what it is made of
     */
    public record Member(Named component, boolean renewed, String when, List<Named> causes) {

        /** Copies the causes. */
        public Member {
            causes = List.copyOf(causes);
        }
    }
}
