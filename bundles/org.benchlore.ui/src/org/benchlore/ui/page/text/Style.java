// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

/** How a run of text looks. */
public enum Style {
    /** Plain words. */
    BODY,
    /** Words that stand out. */
    STRONG,
    /** The page's title. */
    TITLE,
    /** A heading of level 2. */
    HEADING,
    /** A heading of level 3. */
    SUBHEADING,
    /** A label before a value, the number of a step. */
    LABEL,
    /** Under a picture, over a table. */
    CAPTION,
    /** The head of a table. */
    HEAD,
    /** Words that lead somewhere. */
    LINK,
    /** Words of a banner. */
    BANNER,
    /** Signal word of a hazard panel. */
    SIGNAL,
    /** Words of a hazard panel. */
    HAZARD,
    /** The sign on a hazard panel. */
    SIGN
}
