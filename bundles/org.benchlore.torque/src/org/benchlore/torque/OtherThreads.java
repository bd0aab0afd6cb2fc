// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.Optional;
import java.util.regex.Pattern;

/** Threads that are real but not reckoned with here, and why not, so that nobody takes a near one instead. */
final class OtherThreads {

    private static final Pattern NUMBERED = Pattern.compile("(?:#|no\\.? ?)[0-9]{1,2}(?![0-9]).*", Pattern.CASE_INSENSITIVE);
    private static final Pattern PIPE = Pattern.compile("(?:G|Rp?|Rc) ?[0-9].*|(?:.*[^A-Z])?(?:NPTF?|BSPP?|BSPT)(?![A-Z]).*",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SERIES = Pattern.compile(
            "(?:Tr|Rd|S|MJ) ?[0-9].*|.*[^A-Z](?:UN|UNEF|UNS|UNRC?|UNRF|UNJ[CF]?|BSW|BSF)(?![A-Z]).*",
            Pattern.CASE_INSENSITIVE);

    private OtherThreads() {
    }

    /** Why a designation is not reckoned with; empty if it is none of these. */
    static Optional<String> whyNot(String plain) {
        if (NUMBERED.matcher(plain).matches()) {
            return Optional.of("is a numbered inch size; SAE J429 begins at 1/4 in, so it is not reckoned with here "
                    + "(take the maker's figure)");
        }
        if (PIPE.matcher(plain).matches()) {
            return Optional.of("is a pipe thread, which seals and does not clamp, so it is not reckoned with here (take the "
                    + "maker's figure)");
        }
        return SERIES.matcher(plain).matches() ? Optional.of("is of a series that is not reckoned with here (metric, UNC "
                + "and UNF are; take the maker's figure)") : Optional.empty();
    }
}
