// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.log;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String clear;
    public static String columnSource;
    public static String columnText;
    public static String columnTime;
    public static String copy;
    public static String tableName;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
