// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;

import org.benchlore.model.Recorded;
import org.benchlore.page.Labels;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** Whether a list was written down: not recorded, none, or complete as listed. */
final class RecordedWord {

    private static final List<Recorded> WORDS = List.of(Recorded.NOT_RECORDED, Recorded.NONE, Recorded.LISTED);

    private final InnerListField field;
    private final EAttribute attribute;
    private final Combo combo;

    RecordedWord(Composite bar, InnerListField field, EAttribute attribute) {
        this.field = field;
        this.attribute = attribute;
        combo = new Combo(bar, SWT.READ_ONLY);
        WORDS.forEach(word -> combo.add(words(word)));
        combo.setData(Ids.WIDGET_ID, field.id() + ".recorded");
        Keys.name(combo, NLS.bind(Messages.recordedName, field.name()));
        ComboKeys.install(combo);
        combo.setEnabled(field.scope.isEditable());
        combo.addListener(SWT.Selection, event -> choose());
    }

    private static String words(Recorded word) {
        return switch (word) {
            case NOT_RECORDED -> Labels.of(word);
            case NONE -> Messages.recordedNone;
            case LISTED -> Messages.recordedListed;
        };
    }

    private void choose() {
        var chosen = WORDS.get(combo.getSelectionIndex());
        field.attempt(combo.getText(), () -> field.scope.execute(
                field.scope.edits().recorded(field.owner, (EReference) field.feature, chosen)));
        field.showProblem();
    }

    void refresh() {
        var kept = field.scope.unread().find(field.owner, field.feature);
        var now = kept.map(Unread.Typed::text).orElseGet(() -> words((Recorded) field.owner.eGet(attribute)));
        if (!combo.getText().equals(now)) {
            combo.setText(now);
        }
    }
}
