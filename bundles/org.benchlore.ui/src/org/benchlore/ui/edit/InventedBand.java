// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import org.benchlore.page.Labels;
import org.benchlore.ui.Ids;
import org.benchlore.ui.look.Palette;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The band on top of an editor that says, as the page does, that what is written here was invented. */
final class InventedBand {

    /** Styled by the theme's stylesheet in the colours of the band on the page. */
    private static final String STYLE = "benchlore-invented";

    private InventedBand() {
    }

    static void create(Composite parent) {
        var band = new Composite(parent, SWT.NONE);
        var palette = new Palette();
        // The stylesheet reaches the words only.
        band.addListener(SWT.Paint, event -> {
            event.gc.setBackground(palette.color("INVENTED"));
            event.gc.fillRectangle(band.getClientArea());
        });
        palette.onChange(band, band::redraw);
        GridLayoutFactory.fillDefaults().margins(10, 4).applyTo(band);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(band);
        var words = new Label(band, SWT.WRAP);
        words.setText(Labels.INVENTED);
        words.setData("org.eclipse.e4.ui.css.id", STYLE);
        words.setData(Ids.WIDGET_ID, "form.invented");
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(words);
    }
}
