// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.Person;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.edit.form.ComboKeys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** A drop-down of the shop's people; the first line is nobody. */
final class WhoChoice {

    private final Combo combo;
    private final List<Optional<Address>> addresses;

    WhoChoice(Composite parent, Tools tools, String id, String name) {
        var people = tools.people();
        addresses = java.util.stream.Stream.concat(java.util.stream.Stream.of(Optional.<Address>empty()),
                people.stream().map(tools::address)).toList();
        combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setData(Ids.WIDGET_ID, id);
        Keys.name(combo, name);
        combo.add(Messages.nobody);
        people.forEach(person -> combo.add(title(person)));
        combo.setVisibleItemCount(addresses.size());
        combo.select(0);
        ComboKeys.install(combo);
        GridDataFactory.swtDefaults().applyTo(combo);
    }

    static String title(Person person) {
        return person.getTitle() == null ? person.getId() : person.getTitle();
    }

    Combo control() {
        return combo;
    }

    Optional<Address> chosen() {
        return combo.getSelectionIndex() < 0 ? Optional.empty() : addresses.get(combo.getSelectionIndex());
    }

    void choose(Optional<Address> person) {
        int at = Math.max(0, addresses.indexOf(person));
        if (combo.getSelectionIndex() != at) {
            combo.select(at);
        }
    }
}
