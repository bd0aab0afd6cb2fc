// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.access;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String bad;
    public static String before;
    public static String done;
    public static String first;
    public static String firstExample;
    public static String firstName;
    public static String knownName;
    public static String left;
    public static String machine;
    public static String machineName;
    public static String newAccess;
    public static String noEditor;
    public static String noHours;
    public static String noMachine;
    public static String ok;
    public static String procedure;
    public static String procedureName;
    public static String readOnly;
    public static String refit;
    public static String strip;
    public static String timeExample;
    public static String title;
    public static String usual;
    public static String whole;
    public static String wholeWithBad;
    public static String work;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
