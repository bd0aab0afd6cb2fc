// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.status;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String checking;
    public static String counts;
    public static String errors;
    public static String inEditor;
    public static String inventedTitle;
    public static String noLibrary;
    public static String noProblems;
    public static String nothingChanged;
    public static String nothingToTakeBack;
    public static String oneError;
    public static String oneWarning;
    public static String product;
    public static String readOnly;
    public static String takenBack;
    public static String takesBack;
    public static String warnings;
    public static String windowTitle;
    public static String windowTitleInvented;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
