// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tree;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String allMachines;
    public static String buildingTree;
    public static String elementsFit;
    public static String elementsInAll;
    public static String everythingByKind;
    public static String filterHint;
    public static String menuEdit;
    public static String menuOpen;
    public static String noLibrary;
    public static String nothingFits;
    public static String treeName;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
