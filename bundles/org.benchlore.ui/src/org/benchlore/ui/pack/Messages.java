// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String allFiles;
    public static String allOfMachine;
    public static String backQuestion;
    public static String backTitle;
    public static String browse;
    public static String browseWhere;
    public static String choiceDescription;
    public static String choiceTitle;
    public static String columnDay;
    public static String columnKind;
    public static String columnLevel;
    public static String columnMachine;
    public static String columnMentor;
    public static String columnTitle;
    public static String columnVerdict;
    public static String columnWhy;
    public static String conflictQuestion;
    public static String drafts;
    public static String extras;
    public static String filter;
    public static String formLearner;
    public static String formLibrary;
    public static String formPages;
    public static String keepMine;
    public static String looking;
    public static String made;
    public static String noForm;
    public static String noPlace;
    public static String notTaken;
    public static String nothingLeftOut;
    public static String nothingNew;
    public static String packName;
    public static String packTitle;
    public static String placeDescription;
    public static String placeTitle;
    public static String preview;
    public static String progressHead;
    public static String progressNobody;
    public static String progressNothing;
    public static String progressTable;
    public static String progressTaken;
    public static String progressTitle;
    public static String progressWhose;
    public static String putBack;
    public static String reviewedElsewhere;
    public static String stopped;
    public static String take;
    public static String takeDetail;
    public static String takeFiles;
    public static String takeHead;
    public static String takeTable;
    public static String takeTheirs;
    public static String takeTitle;
    public static String taken;
    public static String unreadable;
    public static String where;
    public static String withdrawn;
    public static String wouldBeTaken;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
