// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.Objects;

/** One way to read a text as a fault code; the remark says in plain sentences how it was read and what it tells. */
public record CodeReading(CodeKey key, String remark) {
    public CodeReading {
        Objects.requireNonNull(key);
        Objects.requireNonNull(remark);
    }
}
