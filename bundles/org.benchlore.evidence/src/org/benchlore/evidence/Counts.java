// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

/**
 * Jobs counted.
 *
 * @param failed jobs that failed, each once
 * @param of jobs that failed or were followed long enough
 * @param weightOfFailed the same with jobs on other machines of the family at their weight
 * @param weightOf the same for all
 * @param notFollowed jobs that were not followed long enough
 * @param inTally jobs that the note's tally already speaks for
 * @param otherNumber jobs with another part number
 * @param numberUnknown jobs of a superseded part where nobody wrote the number
 */
public record Counts(int failed, int of, double weightOfFailed, double weightOf, int notFollowed, int inTally,
        int otherNumber, int numberUnknown) {

    static final Counts NONE = new Counts(0, 0, 0, 0, 0, 0, 0, 0);

    Counts plus(boolean failing, double weight) {
        return new Counts(failed + (failing ? 1 : 0), of + 1, weightOfFailed + (failing ? weight : 0),
                weightOf + weight, notFollowed, inTally, otherNumber, numberUnknown);
    }

    Counts plusNotFollowed() {
        return new Counts(failed, of, weightOfFailed, weightOf, notFollowed + 1, inTally, otherNumber, numberUnknown);
    }

    Counts plusInTally() {
        return new Counts(failed, of, weightOfFailed, weightOf, notFollowed, inTally + 1, otherNumber, numberUnknown);
    }

    Counts plusOtherNumber() {
        return new Counts(failed, of, weightOfFailed, weightOf, notFollowed, inTally, otherNumber + 1, numberUnknown);
    }

    Counts plusNumberUnknown() {
        return new Counts(failed, of, weightOfFailed, weightOf, notFollowed, inTally, otherNumber, numberUnknown + 1);
    }
}
