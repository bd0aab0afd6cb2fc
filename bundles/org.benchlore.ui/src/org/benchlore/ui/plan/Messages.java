// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String accessesOf;
    public static String accessesTab;
    public static String cardLies;
    public static String cardNotWritten;
    public static String cardOpened;
    public static String cardTab;
    public static String choices;
    public static String doneAlready;
    public static String finding;
    public static String menuPlanThis;
    public static String noAccesses;
    public static String noAccessesBefore;
    public static String noLibrary;
    public static String noPlanTitle;
    public static String noSenior;
    public static String notYet;
    public static String nothingLeft;
    public static String nothingToPlan;
    public static String openAlready;
    public static String pickState;
    public static String pickSubject;
    public static String pickWork;
    public static String picked;
    public static String planFor;
    public static String planTab;
    public static String planning;
    public static String printCard;
    public static String readOnly;
    public static String refusedTitle;
    public static String seniorQuestion;
    public static String seniorTitle;
    public static String startJob;
    public static String startOver;
    public static String started;
    public static String startingJob;
    public static String subject;
    public static String subjectHint;
    public static String takenBack;
    public static String unitOnly;
    public static String viewFailed;
    public static String work;
    public static String workHint;
    public static String worthAdding;
    public static String writingCard;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
