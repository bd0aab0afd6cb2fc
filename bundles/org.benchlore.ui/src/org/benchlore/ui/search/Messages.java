// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String columnKind;
    public static String columnMachine;
    public static String columnState;
    public static String columnTitle;
    public static String columnWhy;
    public static String everyKind;
    public static String everyMachine;
    public static String fieldHint;
    public static String foundCount;
    public static String hitsName;
    public static String howToSearch;
    public static String kindName;
    public static String machineName;
    public static String noLibrary;
    public static String nothingFound;
    public static String nothingFoundHere;
    public static String onlySomeWords;
    public static String searchFailed;
    public static String searching;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
