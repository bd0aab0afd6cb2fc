// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/**
 * Places a field, filters and a count in one line where there is room, else the filters below. The field never moves
 * while filters come and go.
 */
final class BarLayout extends Layout {

    private static final int WIDE = 900;
    private static final int GAP = 8;
    private static final double FIELD_SHARE = 0.36;

    private final Control field;
    private final Control filters;
    private final Control count;

    BarLayout(Control field, Control filters, Control count) {
        this.field = field;
        this.filters = filters;
        this.count = count;
    }

    @Override
    protected Point computeSize(Composite bar, int widthHint, int heightHint, boolean flush) {
        int width = widthHint == SWT.DEFAULT ? Math.max(WIDE, bar.getParent().getClientArea().width) : widthHint;
        int first = field.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
        var size = filters.computeSize(filtersWidth(width), SWT.DEFAULT);
        boolean empty = isEmpty();
        int height = isWide(width) ? empty ? first : Math.max(first, size.y) : empty ? first : first + GAP / 2 + size.y;
        return new Point(width, height);
    }

    private boolean isEmpty() {
        for (var child : ((Composite) filters).getChildren()) {
            if (child.getVisible()) {
                return false;
            }
        }
        return true;
    }

    private static boolean isWide(int width) {
        return width >= WIDE;
    }

    private int countWidth() {
        return count.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
    }

    private int fieldWidth(int width) {
        return isWide(width) ? (int) (width * FIELD_SHARE) : Math.max(80, width - countWidth() - GAP);
    }

    private int filtersWidth(int width) {
        return isWide(width) ? width - fieldWidth(width) - countWidth() - 2 * GAP : width;
    }

    @Override
    protected void layout(Composite bar, boolean flush) {
        int width = bar.getClientArea().width;
        int height = field.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
        int left = fieldWidth(width);
        field.setBounds(0, 0, left, height);
        int counted = countWidth();
        int label = count.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
        count.setBounds(width - counted, (height - label) / 2, counted, label);
        var size = filters.computeSize(filtersWidth(width), SWT.DEFAULT);
        if (isWide(width)) {
            filters.setBounds(left + GAP, Math.max(0, (height - size.y) / 2), filtersWidth(width), size.y);
        } else {
            filters.setBounds(0, height + GAP / 2, width, size.y);
        }
    }
}
