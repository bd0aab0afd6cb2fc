// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.Optional;

import org.benchlore.search.Hit;
import org.benchlore.ui.Ids;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;

/** The passage of a hit, what fits in it in bold; or what to do where there is no hit. */
final class Preview {

    private final StyledText text;

    Preview(Composite parent) {
        text = new StyledText(parent, SWT.READ_ONLY | SWT.WRAP | SWT.NO_FOCUS);
        text.setEditable(false);
        text.setCaret(null);
        text.setData(Ids.WIDGET_ID, "search.preview");
        text.setData("org.eclipse.e4.ui.css.id", "benchlore-preview");
    }

    StyledText control() {
        return text;
    }

    void show(Optional<Hit> hit) {
        say(hit.map(Hit::excerpt).orElse(""));
        hit.ifPresent(found -> found.marks().forEach(mark -> bold(mark.start(), mark.end())));
    }

    private void bold(int start, int end) {
        int length = text.getCharCount();
        if (start >= 0 && start < end && end <= length) {
            text.setStyleRange(new StyleRange(start, end - start, null, null, SWT.BOLD));
        }
    }

    void say(String words) {
        text.setText(words);
    }
}
