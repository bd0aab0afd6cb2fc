// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.welcome;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String demonstrationNote;
    public static String keys;
    public static String keysTitle;
    public static String name;
    public static String newLibrary;
    public static String openDemonstration;
    public static String openFolder;
    public static String purpose;
    public static String recent;
    public static String start;
    public static String title;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
