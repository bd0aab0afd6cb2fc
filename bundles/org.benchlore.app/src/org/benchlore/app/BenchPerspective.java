// SPDX-License-Identifier: EPL-2.0
package org.benchlore.app;

import org.benchlore.ui.Ids;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The usual places of views: library at the left, search above the reading pages, problems and log below. */
public final class BenchPerspective implements IPerspectiveFactory {

    private static final float LIBRARY_WIDTH = 0.25f;
    private static final float SEARCH_HEIGHT = 0.46f;
    private static final float ABOVE_PROBLEMS = 0.64f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        var pages = layout.getEditorArea();
        layout.addView(Ids.TREE_VIEW, IPageLayout.LEFT, LIBRARY_WIDTH, pages);
        var above = layout.createFolder("above", IPageLayout.TOP, SEARCH_HEIGHT, pages);
        above.addView(Ids.SEARCH_VIEW);
        above.addPlaceholder(Ids.DESK_VIEW);
        above.addPlaceholder(Ids.DIAGNOSE_VIEW);
        above.addPlaceholder(Ids.TORQUE_VIEW);
        above.addPlaceholder(Ids.ADDING_VIEW);
        above.addPlaceholder(Ids.PLAN_VIEW);
        above.addPlaceholder(Ids.JOBS_VIEW);
        var below = layout.createFolder("below", IPageLayout.BOTTOM, ABOVE_PROBLEMS, pages);
        below.addView(Ids.PROBLEMS_VIEW);
        below.addView(Ids.LOG_VIEW);
        below.addPlaceholder(Ids.PROGRESS_VIEW);
        layout.getViewLayout(Ids.SEARCH_VIEW).setCloseable(false);
    }
}
