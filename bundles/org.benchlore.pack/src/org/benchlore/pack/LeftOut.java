// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

/**
 * Something that is spoken of in a pack and does not come along.
 *
 * @param what its kind and title; of what stays private only how many
 * @param reason why, in plain words
 */
public record LeftOut(String what, String reason) implements Comparable<LeftOut> {

    @Override
    public int compareTo(LeftOut other) {
        int byWhat = what.compareTo(other.what);
        return byWhat != 0 ? byWhat : reason.compareTo(other.reason);
    }

    @Override
    public String toString() {
        return what + ": " + reason;
    }
}
