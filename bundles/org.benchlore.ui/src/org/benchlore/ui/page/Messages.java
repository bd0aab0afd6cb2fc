// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String edit;
    public static String findLabel;
    public static String gone;
    public static String makingPage;
    public static String noLibrary;
    public static String notAnElement;
    public static String notOnPage;
    public static String openingFailed;
    public static String otherLibrary;
    public static String placeOf;
    public static String unreadable;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
