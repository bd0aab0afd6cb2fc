// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.model.Unit;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;

/** The names of components and units, read once for each state of their files. */
final class KnownNames {

    /** What an element is called in a text. */
    record Name(Address address, String title, TextWords words, Optional<Address> machine) {
    }

    private record Read(String hash, List<Name> names) {
    }

    private final Library library;
    private final Map<String, Read> read = new ConcurrentHashMap<>();

    KnownNames(Library library) {
        this.library = library;
    }

    /** Names of everything in a machine's or a unit's file. */
    List<Name> in(String path) {
        var hash = library.catalogue().entry(path).map(entry -> entry.hash()).orElse("");
        var known = read.get(path);
        if (known == null || !known.hash().equals(hash)) {
            known = new Read(hash, library.file(path).flatMap(LoadedFile::root).map(top -> names(path, top)).orElse(List.of()));
            read.put(path, known);
        }
        return known.names();
    }

    List<Name> units() {
        return library.catalogue().rows(Kind.UNIT).flatMap(row -> in(row.path()).stream()).toList();
    }

    private List<Name> names(String path, TopElement top) {
        var names = new ArrayList<Name>();
        if (top instanceof Unit unit) {
            unit(path, unit, names);
        }
        top.eAllContents().forEachRemaining(inner -> {
            if (inner instanceof Component component && component.getId() != null) {
                component(path, component, names);
            }
        });
        return names;
    }

    private static void component(String path, Component component, List<Name> names) {
        var address = new Address(path, component.getId());
        var title = component.getTitle() == null ? component.getId() : component.getTitle();
        names.add(new Name(address, title, new TextWords(component.getTitle()), Optional.empty()));
        component.getNames().forEach(name -> names.add(new Name(address, title, new TextWords(name), Optional.empty())));
    }

    /** A bare number says little: the fleet number counts behind the title's first word or a word for 'number'. */
    private void unit(String path, Unit unit, List<Name> names) {
        var address = new Address(path, unit.getId());
        var machine = library.addressOf(unit.getMachine());
        var title = unit.getTitle() == null ? unit.getId() : unit.getTitle();
        names.add(new Name(address, title, new TextWords(title), machine));
        names.add(new Name(address, title, new TextWords(title.split(",")[0]), machine));
        var number = unit.getFleetNumber();
        if (number != null) {
            var first = title.split("\\s+")[0];
            for (var before : List.of(first, "unit", "number", "no", "fleet number")) {
                names.add(new Name(address, title, new TextWords(before + " " + number), machine));
            }
            if (number.matches(".*\\p{L}.*") && number.matches(".*\\d.*")) {
                names.add(new Name(address, title, new TextWords(number), machine));
            }
        }
    }
}
