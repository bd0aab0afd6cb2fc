// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import java.util.Optional;

import org.benchlore.check.Fix;
import org.benchlore.check.Problem;
import org.benchlore.check.Rule;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** Says of the selected problem the whole sentence, what must be so and what happens otherwise, and how it is mended. */
final class RulePane {

    private final Text text;

    RulePane(Composite parent) {
        text = new Text(parent, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
        text.setData(Ids.WIDGET_ID, "problems.rule");
        Keys.name(text, Messages.rulePaneName);
        text.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
    }

    void show(Optional<ProblemRow> row, Optional<Rule> rule) {
        var words = new StringBuilder(row.map(ProblemRow::sentence).orElse(""));
        rule.ifPresent(one -> {
            words.append('\n').append(NLS.bind(Messages.ruleSays, one.title(), one.why()));
            if (!one.about().reach().isBlank()) {
                words.append('\n').append(NLS.bind(Messages.ruleCannotSee, one.about().reach()));
            }
        });
        row.filter(ProblemRow::canBeMended).flatMap(ProblemRow::problem).flatMap(Problem::fix).map(Fix::label)
                .ifPresent(label -> words.append('\n').append(NLS.bind(Messages.mendsBy, label)));
        if (!text.getText().equals(words.toString())) {
            text.setText(words.toString());
        }
    }
}
