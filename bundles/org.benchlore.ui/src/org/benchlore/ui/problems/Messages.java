// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String alreadySilenced;
    public static String checking;
    public static String columnElement;
    public static String columnRule;
    public static String columnSentence;
    public static String columnSort;
    public static String counts;
    public static String elementAndPlace;
    public static String error;
    public static String errors;
    public static String fileRule;
    public static String filesAreNotSilenced;
    public static String filter;
    public static String mendByHand;
    public static String mendSilenced;
    public static String mended;
    public static String mendsBy;
    public static String menuEdit;
    public static String menuMend;
    public static String menuMendBy;
    public static String menuOpen;
    public static String menuSilence;
    public static String noLibrary;
    public static String noProblems;
    public static String noShop;
    public static String nobodyNamed;
    public static String oneError;
    public static String oneWarning;
    public static String ruleCannotSee;
    public static String rulePaneName;
    public static String ruleSays;
    public static String showSilenced;
    public static String silenceButton;
    public static String silenceBy;
    public static String silenceQuestion;
    public static String silenceTitle;
    public static String silenced;
    public static String silencedBecause;
    public static String silencedWord;
    public static String someShown;
    public static String tableName;
    public static String warning;
    public static String warnings;
    public static String whatWasChecked;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
