// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.ui.Ids;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;

/** Offers the text as it was probably meant; takes no room where there is nothing to offer. */
final class MeantLine {

    private final Link link;
    private String meant = "";

    MeantLine(Composite parent, Consumer<String> chosen) {
        link = new Link(parent, SWT.NONE);
        link.setData(Ids.WIDGET_ID, "search.meant");
        link.addListener(SWT.Selection, event -> chosen.accept(meant));
        GridDataFactory.fillDefaults().grab(true, false).indent(4, 0).exclude(true).applyTo(link);
        link.setVisible(false);
    }

    void show(Optional<String> text) {
        meant = text.orElse("");
        var shown = text.isPresent();
        if (shown) {
            link.setText(NLS.bind(Messages.didYouMean, escaped(meant)));
        }
        if (shown != link.getVisible()) {
            ((GridData) link.getLayoutData()).exclude = !shown;
            link.setVisible(shown);
            link.getParent().layout();
        } else if (shown) {
            link.requestLayout();
        }
    }

    /** A link's text is markup, in which {@code &} stands before a key. */
    private static String escaped(String text) {
        return text.replace("&", "&&").replace("<", "‹").replace(">", "›");
    }
}
