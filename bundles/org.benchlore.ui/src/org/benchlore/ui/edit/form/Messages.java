// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String access;
    public static String add;
    public static String addByKey;
    public static String addKeys;
    public static String choices;
    public static String chooseOne;
    public static String chosen;
    public static String clear;
    public static String down;
    public static String downKeys;
    public static String duplicate;
    public static String duplicateKeys;
    public static String fieldMissing;
    public static String makeNew;
    public static String noLines;
    public static String nothingChosen;
    public static String oneALine;
    public static String open;
    public static String or;
    public static String recordedListed;
    public static String recordedName;
    public static String recordedNone;
    public static String remove;
    public static String removeKeys;
    public static String textMissing;
    public static String typeToAdd;
    public static String typeToChoose;
    public static String up;
    public static String upKeys;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
