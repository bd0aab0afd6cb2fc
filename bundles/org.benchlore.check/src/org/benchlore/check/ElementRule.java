// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

/** A rule that looks at one file alone. */
public abstract non-sealed class ElementRule implements Rule {

    private final About about;

    /** Makes the rule. */
    protected ElementRule(About about) {
        this.about = about;
    }

    /** Looks at an element and reports what does not hold. Passes over elements it is not about. */
    public abstract void check(Subject subject, Findings findings);

    @Override
    public final About about() {
        return about;
    }

    @Override
    public final Scope scope() {
        return Scope.ELEMENT;
    }
}
