// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String columnPlace;
    public static String columnReason;
    public static String noLibrary;
    public static String noProblems;
    public static String oneProblem;
    public static String problems;
    public static String tableName;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
