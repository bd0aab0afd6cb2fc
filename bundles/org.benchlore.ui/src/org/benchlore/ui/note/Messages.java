// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String addPhoto;
    public static String arrow;
    public static String arrowHow;
    public static String arrowName;
    public static String arrowOk;
    public static String arrowTitle;
    public static String caption;
    public static String chip;
    public static String cause;
    public static String chipsLabel;
    public static String chooseTitle;
    public static String code;
    public static String component;
    public static String drop;
    public static String during;
    public static String goneOn;
    public static String howToSave;
    public static String invented;
    public static String job;
    public static String later;
    public static String machine;
    public static String menuSeenAgain;
    public static String menuToStep;
    public static String noNote;
    public static String nothingToPaste;
    public static String pastePhoto;
    public static String photoLine;
    public static String photosName;
    public static String proposing;
    public static String readOnly;
    public static String remove;
    public static String save;
    public static String saved;
    public static String saving;
    public static String seenNowhere;
    public static String seenOn;
    public static String seenReadOnly;
    public static String stepBehind;
    public static String stepFirst;
    public static String stepMade;
    public static String stepMadeInBoth;
    public static String stepOk;
    public static String stepPlace;
    public static String stepPlacesName;
    public static String stepProcedure;
    public static String stepProcedureName;
    public static String stepProceduresName;
    public static String stepTitle;
    public static String stepWords;
    public static String symptom;
    public static String takenBack;
    public static String takingPhoto;
    public static String textName;
    public static String title;
    public static String turn;
    public static String unit;
    public static String waitingForPhoto;
    public static String whatWasLearned;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
