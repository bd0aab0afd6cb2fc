// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String all;
    public static String answerAbout;
    public static String closeIt;
    public static String closed;
    public static String collecting;
    public static String columnJob;
    public static String columnNext;
    public static String columnOpened;
    public static String columnState;
    public static String columnUnit;
    public static String columnWaits;
    public static String counts;
    public static String filter;
    public static String fromPlan;
    public static String keys;
    public static String newJob;
    public static String next;
    public static String noJobs;
    public static String noLibrary;
    public static String noneOpen;
    public static String noneShown;
    public static String open;
    public static String parts;
    public static String planIt;
    public static String tableName;
    public static String viewFailed;
    public static String waiting;
    public static String which;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
