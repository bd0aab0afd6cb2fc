// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String apart;
    public static String because;
    public static String choose;
    public static String extra;
    public static String figure;
    public static String figureHint;
    public static String figureWhole;
    public static String figures;
    public static String from;
    public static String intoPlan;
    public static String keep;
    public static String keepHint;
    public static String makingSheet;
    public static String noAdvice;
    public static String noDay;
    public static String noFolder;
    public static String noJobForOffers;
    public static String noLibrary;
    public static String noNumber;
    public static String noPhoto;
    public static String noPhotos;
    public static String noSheetFile;
    public static String noneTicked;
    public static String notBelow;
    public static String notKnown;
    public static String nothingHelp;
    public static String nothingTitle;
    public static String nothingToWeigh;
    public static String ofHundred;
    public static String offersAdded;
    public static String offersBack;
    public static String offersWritten;
    public static String onlyNoted;
    public static String paysFrom;
    public static String photoNotShown;
    public static String pickState;
    public static String pickSubject;
    public static String pickWork;
    public static String proposals;
    public static String readingJob;
    public static String refusedHelp;
    public static String refusedTitle;
    public static String reset;
    public static String resetAll;
    public static String save;
    public static String saveAndOpen;
    public static String savingSheet;
    public static String seen;
    public static String sheet;
    public static String sheetAdvice;
    public static String sheetDeclined;
    public static String sheetFile;
    public static String sheetFirst;
    public static String sheetFound;
    public static String sheetIsThere;
    public static String sheetLies;
    public static String sheetNotMade;
    public static String sheetNotSaved;
    public static String sheetOfJob;
    public static String sheetOpened;
    public static String sheetPhoto;
    public static String sheetPhotoFile;
    public static String sheetSaved;
    public static String sheetTitle;
    public static String sheetValid;
    public static String sheetValidHint;
    public static String sheetWithoutJob;
    public static String shopApart;
    public static String shopExtra;
    public static String startOver;
    public static String stop;
    public static String stopped;
    public static String ticked;
    public static String title;
    public static String value;
    public static String viewFailed;
    public static String weAdvise;
    public static String weighing;
    public static String work;
    public static String writeOffers;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
