// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui;

/** Ids of what plugin.xml declares and code needs to name. */
public final class Ids {

    /** This bundle. */
    public static final String BUNDLE = "org.benchlore.ui";
    /** The perspective with everything for the bench. */
    public static final String PERSPECTIVE = BUNDLE + ".bench";
    /** View: the library as a tree. */
    public static final String TREE_VIEW = BUNDLE + ".tree";
    /** View: one field that finds everything. */
    public static final String SEARCH_VIEW = BUNDLE + ".search";
    /** View: what waits to be sorted, joined and confirmed. */
    public static final String DESK_VIEW = BUNDLE + ".desk";
    /** View: what may be wrong with a machine. */
    public static final String DIAGNOSE_VIEW = BUNDLE + ".diagnose";
    /** View: torques, wrenches and sequences. */
    public static final String TORQUE_VIEW = BUNDLE + ".torque";
    /** View: what is worth adding while a machine is open. */
    public static final String ADDING_VIEW = BUNDLE + ".adding";
    /** View: one plan for all that is to be done. */
    public static final String PLAN_VIEW = BUNDLE + ".plan";
    /** View: the jobs of the shop. */
    public static final String JOBS_VIEW = BUNDLE + ".jobs";
    /** View: what is wrong with files. */
    public static final String PROBLEMS_VIEW = BUNDLE + ".problems";
    /** View: what the program noted while it ran. */
    public static final String LOG_VIEW = BUNDLE + ".log";
    /** View: what is running; the platform looks for it under this id. */
    public static final String PROGRESS_VIEW = "org.eclipse.ui.views.ProgressView";
    /** Editor: the reading page of an element. */
    public static final String PAGE_EDITOR = BUNDLE + ".page";
    /** Editor: an element in a form. */
    public static final String FORM_EDITOR = BUNDLE + ".form";
    /** Editor: the welcome page. */
    public static final String WELCOME_EDITOR = BUNDLE + ".welcome";
    /** Command: splits the hours of what is being edited. */
    public static final String SPLIT_HOURS = BUNDLE + ".access.split";
    /** Key of the id that a widget carries for tests. */
    public static final String WIDGET_ID = "id";

    private Ids() {
    }
}
