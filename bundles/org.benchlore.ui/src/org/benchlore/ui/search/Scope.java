// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Kind;
import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Words;
import org.benchlore.ui.session.Opened;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** Two lists that narrow the search: a kind, a machine. */
final class Scope {

    private static final List<Kind> KINDS = List.of(Kind.values());

    private final Combo kind;
    private final Combo machine;
    private List<String> machineIds = List.of();

    Scope(Composite parent, Runnable changed) {
        kind = combo(parent, "search.kind", Messages.kindName, changed);
        kind.add(Messages.everyKind);
        KINDS.forEach(one -> kind.add(Words.many(one)));
        kind.select(0);
        machine = combo(parent, "search.machine", Messages.machineName, changed);
        machine.add(Messages.everyMachine);
        machine.select(0);
    }

    private static Combo combo(Composite parent, String id, String name, Runnable changed) {
        var combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setData(Ids.WIDGET_ID, id);
        combo.setToolTipText(name);
        Keys.name(combo, name);
        combo.addListener(SWT.Selection, event -> changed.run());
        return combo;
    }

    /** Offers the machines of a library; what was chosen stays if it is still there. */
    void offer(Optional<Opened> library) {
        var chosen = machine();
        var rows = library.map(opened -> opened.library().library().catalogue().rows(Kind.MACHINE).toList())
                .orElse(List.of());
        machineIds = rows.stream().map(Row::id).toList();
        var labels = new ArrayList<String>(List.of(Messages.everyMachine));
        rows.stream().map(Row::title).forEach(labels::add);
        machine.setItems(labels.toArray(String[]::new));
        machine.select(chosen.map(machineIds::indexOf).orElse(-1) + 1);
        machine.getParent().layout();
    }

    Optional<Kind> kind() {
        int index = kind.getSelectionIndex();
        return index <= 0 ? Optional.empty() : Optional.of(KINDS.get(index - 1));
    }

    Optional<String> machine() {
        int index = machine.getSelectionIndex();
        return index <= 0 ? Optional.empty() : Optional.of(machineIds.get(index - 1));
    }
}
