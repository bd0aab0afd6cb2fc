// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String hazardUnsorted;
    public static String signOff;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
