// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Kind;
import org.benchlore.ui.look.Words;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.osgi.util.NLS;

/** Finds elements of a type. A part, tool or supply of which only the name is known yet is made at once. */
final class ElementFinder implements Finder {

    private static final int MOST = 40;
    private static final int SHORTEST_NAME = 4;
    private static final Set<Kind> MADE = EnumSet.of(Kind.PART, Kind.TOOL, Kind.SUPPLY);

    private final Choices choices;
    private final EClass type;
    private final ElementMaker maker;

    ElementFinder(Choices choices, EClass type, ElementMaker maker) {
        this.choices = choices;
        this.type = type;
        this.maker = maker;
    }

    @Override
    public List<Choice> find(String typed) {
        return choices.find(type, typed, MOST);
    }

    private Optional<Kind> kind() {
        return Kind.of(type).filter(MADE::contains);
    }

    @Override
    public Optional<String> offer(String typed) {
        return typed.strip().length() < SHORTEST_NAME || find(typed).stream().anyMatch(choice -> choice.isNamed(typed))
                ? Optional.empty() : kind().map(kind ->
                NLS.bind(Messages.makeNew, Words.one(kind).toLowerCase(Locale.ROOT), typed.strip()));
    }

    @Override
    public Optional<Choice> make(String typed) {
        return kind().flatMap(kind -> maker.make(kind, typed.strip()))
                .map(address -> new Choice(address, typed.strip(), address.id(), List.of()));
    }
}
