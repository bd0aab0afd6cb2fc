// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String about;
    public static String aboutHint;
    public static String after;
    public static String afterHint;
    public static String answerGone;
    public static String answersTitle;
    public static String begin;
    public static String checkFirst;
    public static String choices;
    public static String codes;
    public static String codesHint;
    public static String failed;
    public static String intoJob;
    public static String intoThisJob;
    public static String jobInEditor;
    public static String jobTakenBack;
    public static String jobWritten;
    public static String meant;
    public static String meantTitle;
    public static String newJob;
    public static String noLibrary;
    public static String noMachines;
    public static String nothingAsked;
    public static String notMeant;
    public static String plan;
    public static String planItem;
    public static String readOnly;
    public static String symptoms;
    public static String symptomsHint;
    public static String takeBack;
    public static String unitOnly;
    public static String viewFailed;
    public static String weighing;
    public static String what;
    public static String writeDown;
    public static String writingJob;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
