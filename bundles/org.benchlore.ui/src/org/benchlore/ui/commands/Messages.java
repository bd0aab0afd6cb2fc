// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String nameMissing;
    public static String newName;
    public static String newTitle;
    public static String newWhere;
    public static String openTitle;
    public static String openWhich;
    public static String viewFailed;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
