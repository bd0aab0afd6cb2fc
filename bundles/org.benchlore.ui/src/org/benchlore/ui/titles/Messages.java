// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.titles;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String fieldLabel;
    public static String fieldName;
    public static String finding;
    public static String nothing;
    public static String tableName;
    public static String title;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
