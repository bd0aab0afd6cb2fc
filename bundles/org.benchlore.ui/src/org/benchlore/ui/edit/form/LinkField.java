// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Icons;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** A reference to one element: typed and completed, shown by its title, cleared and opened with a button each. */
final class LinkField extends ChoiceField {

    private Button clear;
    private Button open;

    LinkField(FormScope scope, EObject owner, EReference reference) {
        super(scope, owner, reference);
    }

    @Override
    void createControl(Composite holder, Mnemonics mnemonics) {
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(2, 2).applyTo(holder);
        createText(holder, Messages.typeToChoose);
        clear = button(holder, "clear", Messages.clear, () -> set(Optional.empty()));
        open = button(holder, "page", Messages.open, () -> target().ifPresent(scope::open));
        Keys.on(text, SWT.F3, () -> target().ifPresent(scope::open));
        // Emptying the field and F3 do the same as the buttons.
        holder.setTabList(new Control[] {text});
        createChoices(holder);
    }

    private Button button(Composite holder, String icon, String words, Runnable action) {
        var button = new Button(holder, SWT.PUSH | SWT.FLAT);
        button.setImage(new Icons(button).named(icon));
        button.setToolTipText(NLS.bind(words, name()));
        button.setData(Ids.WIDGET_ID, id() + "." + icon);
        Keys.name(button, NLS.bind(words, name()));
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private Optional<Address> target() {
        return scope.targets(owner, reference).stream().findFirst();
    }

    @Override
    void emptied() {
        set(Optional.empty());
    }

    @Override
    boolean isChosen(String words) {
        return words.equals(title());
    }

    @Override
    void take(Choice choice) {
        set(Optional.of(choice.address()));
        text.setSelection(text.getCharCount());
    }

    private void set(Optional<Address> target) {
        scope.unread().remove(owner, feature);
        if (!target.equals(target())) {
            scope.execute(scope.edits().reference(owner, reference, target));
        }
        refresh();
    }

    private String title() {
        return target().map(scope.choices()::title).orElse("");
    }

    @Override
    void refresh() {
        var shown = kept().orElseGet(this::title);
        write(shown);
        clear.setEnabled(scope.isEditable() && !shown.isEmpty());
        open.setEnabled(target().isPresent());
        showProblem();
    }
}
