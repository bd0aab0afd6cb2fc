// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String accesses;
    public static String addAccessMenu;
    public static String addCauseMenu;
    public static String addChainMenu;
    public static String addComponentMenu;
    public static String addKind;
    public static String addKindKeys;
    public static String addStep;
    public static String addStepKeys;
    public static String addStepMenu;
    public static String addStepOfWorkMenu;
    public static String addWayMenu;
    public static String addWithinMenu;
    public static String allMine;
    public static String allTheirs;
    public static String chains;
    public static String changedOutside;
    public static String components;
    public static String conflictBefore;
    public static String conflictIntro;
    public static String conflictMine;
    public static String conflictNone;
    public static String conflictTheirs;
    public static String conflictTitle;
    public static String copyMenu;
    public static String cutMenu;
    public static String deeperMenu;
    public static String deletedTitle;
    public static String discard;
    public static String discardFailed;
    public static String discarded;
    public static String downKeys;
    public static String downShort;
    public static String draftChanged;
    public static String draftGone;
    public static String draftNew;
    public static String draftSame;
    public static String duplicateMenu;
    public static String editFailed;
    public static String file;
    public static String fileReadOnly;
    public static String goThere;
    public static String insertFailed;
    public static String insertLabel;
    public static String insertMenu;
    public static String insertOk;
    public static String insertProcedure;
    public static String insertProcedureName;
    public static String insertProceduresName;
    public static String insertSteps;
    public static String insertStepsName;
    public static String insertTitle;
    public static String libraryReadOnly;
    public static String linesLabel;
    public static String machineOutlineName;
    public static String more;
    public static String moveToMenu;
    public static String newFailed;
    public static String newFile;
    public static String newKind;
    public static String newKindName;
    public static String newName;
    public static String newNameName;
    public static String newTitle;
    public static String noComponent;
    public static String noLibrary;
    public static String noWay;
    public static String noWork;
    public static String notAnElement;
    public static String notHere;
    public static String oneProblem;
    public static String outMenu;
    public static String outlineName;
    public static String pasteLinesLabel;
    public static String pasteMenu;
    public static String problems;
    public static String readOnly;
    public static String recoveryIntro;
    public static String recoveryLater;
    public static String recoveryTitle;
    public static String redone;
    public static String refit;
    public static String removeKeys;
    public static String removeShort;
    public static String removedLeads;
    public static String removedLeadsOne;
    public static String restore;
    public static String restoreFailed;
    public static String restored;
    public static String saveAnew;
    public static String saveFailed;
    public static String saveOther;
    public static String saving;
    public static String splitHoursMenu;
    public static String splitMenu;
    public static String stepEmpty;
    public static String strip;
    public static String takeAndSave;
    public static String undone;
    public static String upKeys;
    public static String upShort;
    public static String wayNumber;
    public static String workWithTime;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}
