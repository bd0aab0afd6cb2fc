// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.desk;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String alike;
    public static String collecting;
    public static String columnTitle;
    public static String columnWords;
    public static String declined;
    public static String declinedWords;
    public static String held;
    public static String heldQuestion;
    public static String heldTitle;
    public static String keys;
    public static String likeness;
    public static String noLibrary;
    public static String nothingToTakeBack;
    public static String replaced;
    public static String ruledOut;
    public static String ruledOutQuestion;
    public static String ruledOutTitle;
    public static String seen;
    public static String seenAgain;
    public static String suspected;
    public static String takenBack;
    public static String toConfirm;
    public static String treeName;
    public static String unsorted;
    public static String whatItIs;
    public static String working;
    public static String writeSomething;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
