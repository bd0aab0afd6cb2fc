// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String checking;
    public static String checkingFailed;
    public static String closing;
    public static String opening;
    public static String openingFailed;
    public static String refreshing;
    public static String settling;
    public static String settlingFailed;
    public static String warmingUp;
    public static String warmingUpFailed;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
