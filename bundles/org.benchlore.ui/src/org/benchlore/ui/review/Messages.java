// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.review;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String alike;
    public static String changedSince;
    public static String chooseVersion;
    public static String compareTitle;
    public static String compareWith;
    public static String comparing;
    public static String differences;
    public static String error;
    public static String file;
    public static String fileTitle;
    public static String followedInstead;
    public static String isDraft;
    public static String looking;
    public static String markReviewed;
    public static String mayBeReviewed;
    public static String menuCompare;
    public static String menuReview;
    public static String menuWithdraw;
    public static String neverReviewed;
    public static String noCopy;
    public static String noPacks;
    public static String noProblems;
    public static String noProcedure;
    public static String noSuccessor;
    public static String nobodyThere;
    public static String nothingChanged;
    public static String nothingInFront;
    public static String oneDifference;
    public static String other;
    public static String otherHint;
    public static String pack;
    public static String packWithRevision;
    public static String packs;
    public static String problem;
    public static String problemAt;
    public static String problems;
    public static String quoted;
    public static String readOnly;
    public static String reopened;
    public static String reviewTitle;
    public static String reviewed;
    public static String reviewedCopy;
    public static String reviewer;
    public static String saved;
    public static String savedVersion;
    public static String someDifferences;
    public static String standsChanged;
    public static String standsDraft;
    public static String standsReviewed;
    public static String standsUnknown;
    public static String standsWithdrawn;
    public static String successor;
    public static String successorHint;
    public static String titleAndStanding;
    public static String titleRevisionAndStanding;
    public static String unknownDay;
    public static String unreadable;
    public static String warning;
    public static String whoReviews;
    public static String whyWithdrawn;
    public static String withdraw;
    public static String withdrawTitle;
    public static String withdrawn;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
