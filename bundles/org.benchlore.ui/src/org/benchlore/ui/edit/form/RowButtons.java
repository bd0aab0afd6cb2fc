// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;

/** Buttons in a row that take no room while they are of no use. */
final class RowButtons {

    private RowButtons() {
    }

    /** Shows buttons or hides them; tells whether that changed anything. */
    static boolean show(boolean isShown, Button... buttons) {
        boolean changed = false;
        for (var button : buttons) {
            if (!(button.getLayoutData() instanceof RowData data) || data.exclude == isShown) {
                var room = new RowData();
                room.exclude = !isShown;
                button.setLayoutData(room);
                button.setVisible(isShown);
                changed = true;
            }
        }
        return changed;
    }
}
