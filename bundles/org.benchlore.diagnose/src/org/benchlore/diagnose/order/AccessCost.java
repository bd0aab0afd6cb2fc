// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.order;

import java.util.Map;
import java.util.Set;

/** How long it takes to open what checks need; what several checks need is opened once. */
public interface AccessCost {

    /**
     * Returns the time to open all of these from where the machine stands.
     *
     * @param wanted names of what must be open
     * @return minutes, never less for more that is wanted
     */
    double minutes(Set<String> wanted);

    /**
     * Makes costs that simply add up.
     *
     * @param each minutes by name; what is not in it costs nothing
     * @return the costs
     */
    static AccessCost sum(Map<String, Double> each) {
        var minutes = Map.copyOf(each);
        return wanted -> wanted.stream().mapToDouble(name -> minutes.getOrDefault(name, 0.0)).sum();
    }
}
