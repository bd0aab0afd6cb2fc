// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String howToSave;
    public static String noLibrary;
    public static String save;
    public static String saving;
    public static String textName;
    public static String title;
    public static String whatWasLearned;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
