// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String allTicked;
    public static String angleName;
    public static String arrival;
    public static String asAsked;
    public static String by;
    public static String byName;
    public static String chooseWho;
    public static String closeAllTheSame;
    public static String closeMissing;
    public static String closeTitle;
    public static String confirm;
    public static String diagnose;
    public static String ended;
    public static String keys;
    public static String left;
    public static String leftWhat;
    public static String minutes;
    public static String next;
    public static String nextRound;
    public static String noPlan;
    public static String noWrench;
    public static String nobody;
    public static String notPlanned;
    public static String notWithin;
    public static String notYet;
    public static String nothingPlanned;
    public static String nothingToSave;
    public static String offers;
    public static String offersWhat;
    public static String otherTorque;
    public static String people;
    public static String planFromHere;
    public static String plannedMinutes;
    public static String planning;
    public static String progress;
    public static String proofMissing;
    public static String proposeLeft;
    public static String proposeSaved;
    public static String round;
    public static String roundBegin;
    public static String roundKind;
    public static String roundMore;
    public static String roundText;
    public static String roundTitle;
    public static String roundWork;
    public static String saved;
    public static String savedWhat;
    public static String stands;
    public static String takeBack;
    public static String tick;
    public static String ticked;
    public static String toAnswer;
    public static String toConfirm;
    public static String torqueName;
    public static String treeName;
    public static String unitFirst;
    public static String unitMissing;
    public static String viewFailed;
    public static String who;
    public static String whoName;
    public static String worthAdding;
    public static String wrench;
    public static String wrenchName;
    public static String writeNote;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
