// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Shows either what was found or a guide to what can be done. */
final class SearchBody {

    private final Composite stack;
    private final StackLayout layout = new StackLayout();
    private final ResultsPane results;
    private final Guide guide;
    private final Runnable leave;

    /** Makes it; {@code leave} puts the cursor into the field. */
    SearchBody(Composite parent, Consumer<Address> opener, Runnable leave) {
        this.leave = leave;
        stack = new Composite(parent, SWT.NONE);
        stack.setLayout(layout);
        results = new ResultsPane(stack, opener, leave);
        guide = new Guide(stack, leave);
        layout.topControl = guide.control();
    }

    Composite control() {
        return stack;
    }

    ResultsPane results() {
        return results;
    }

    Guide guide() {
        return guide;
    }

    boolean showsResults() {
        return layout.topControl == results.control();
    }

    void showResults() {
        bringUp(results.control());
    }

    void showGuide() {
        bringUp(guide.control());
    }

    private void bringUp(Control control) {
        if (layout.topControl != control) {
            var hadCursor = isWithin(stack.getDisplay().getFocusControl(), layout.topControl);
            layout.topControl = control;
            stack.layout();
            if (hadCursor) {
                leave.run();
            }
        }
    }

    private static boolean isWithin(Control inner, Control outer) {
        for (var one = inner; one != null; one = one.getParent()) {
            if (one == outer) {
                return true;
            }
        }
        return false;
    }

    /** Goes down from the field into whatever is shown. */
    void focus() {
        if (showsResults()) {
            results.hits().focus();
        } else {
            guide.focusFirst();
        }
    }
}
