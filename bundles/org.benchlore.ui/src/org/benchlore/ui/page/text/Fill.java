// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

/** What is behind a line. */
public enum Fill {
    /** Nothing but the page. */
    NONE,
    /** Banner: invented data. */
    INVENTED,
    /** Banner: do not follow. */
    STOP,
    /** Banner: to know before reading on. */
    ATTENTION,
    /** Banner: a standing caution. */
    STANDING_CAUTION,
    /** The head of a table. */
    TABLE_HEAD,
    /** Signal word DANGER. */
    DANGER,
    /** Signal word WARNING. */
    WARNING,
    /** Signal word CAUTION. */
    CAUTION,
    /** Signal word NOTICE, and hazards whose signal word is not recorded. */
    NOTICE,
    /** Words of a hazard panel. */
    HAZARD_WORDS;

    /**
     * Tells whether this is the top of a hazard panel.
     *
     * @return true for the signal words
     */
    public boolean isSignal() {
        return this == DANGER || this == WARNING || this == CAUTION || this == NOTICE;
    }
}
