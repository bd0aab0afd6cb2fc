// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String belongsToIt;
    public static String didYouMean;
    public static String everyKind;
    public static String everyMachine;
    public static String everyStatus;
    public static String everySystem;
    public static String everyYear;
    public static String facetChosen;
    public static String facetKind;
    public static String facetMachine;
    public static String facetStatus;
    public static String facetSystem;
    public static String facetYear;
    public static String fieldHint;
    public static String fieldName;
    public static String filterRemoveTip;
    public static String filterTip;
    public static String forExample;
    public static String foundCount;
    public static String foundLeast;
    public static String foundSome;
    public static String hitsName;
    public static String howToSearch;
    public static String machineTip;
    public static String menuEdit;
    public static String menuOpen;
    public static String noLibrary;
    public static String noStatus;
    public static String noneHoldsAll;
    public static String nothingFound;
    public static String nothingFoundHere;
    public static String onlySomeWords;
    public static String openDemonstration;
    public static String openFolder;
    public static String openForHazards;
    public static String previewName;
    public static String removeFilters;
    public static String searchEverywhere;
    public static String searchFewer;
    public static String searching;
    public static String writeFirst;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
