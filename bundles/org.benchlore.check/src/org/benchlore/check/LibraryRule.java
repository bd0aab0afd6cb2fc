// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.stream.Stream;

import org.benchlore.store.Catalogue.Entry;

/** A rule over the facts of the whole library; it loads no file. */
public abstract non-sealed class LibraryRule implements Rule {

    private final About about;

    /** Makes the rule. */
    protected LibraryRule(About about) {
        this.about = about;
    }

    /** Looks at one file's facts among all and reports what does not hold at that file. */
    public abstract void check(Entry entry, LibraryFacts facts, Findings findings);

    /** Paths of other files at which a change of this one may bring a problem or take it away. */
    public Stream<String> touched(Entry entry, LibraryFacts facts) {
        return Stream.empty();
    }

    @Override
    public final About about() {
        return about;
    }

    @Override
    public final Scope scope() {
        return Scope.LIBRARY;
    }
}
