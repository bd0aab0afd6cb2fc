// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.look;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String code;
    public static String codes;
    public static String document;
    public static String documents;
    public static String glossary;
    public static String job;
    public static String jobs;
    public static String machine;
    public static String machines;
    public static String note;
    public static String notes;
    public static String part;
    public static String parts;
    public static String procedure;
    public static String procedures;
    public static String shop;
    public static String stateClosed;
    public static String stateDraft;
    public static String stateHeld;
    public static String stateOpen;
    public static String stateReviewed;
    public static String stateRuledOut;
    public static String stateSeen;
    public static String stateSuperseded;
    public static String stateSuspected;
    public static String stateUnsorted;
    public static String stateWaitingForAnswer;
    public static String stateWaitingForParts;
    public static String stateWithdrawn;
    public static String supplies;
    public static String supply;
    public static String tool;
    public static String tools;
    public static String unit;
    public static String units;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
