// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.benchlore.model.Address;
import org.benchlore.model.Element;
import org.benchlore.model.Kind;
import org.benchlore.model.Shop;
import org.benchlore.model.TopElement;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;

/** What an element refers to. Inner elements are found by an index of each file. Safe for several threads. */
public final class Neighbours {

    private final Library library;
    private final LocalDate today;
    private final Map<String, Inner> inner = new ConcurrentHashMap<>();

    /** The elements of a file by id, as long as its snapshot is this one. */
    private record Inner(TopElement top, Map<String, EObject> byId) {

        static Inner of(TopElement top) {
            var byId = new HashMap<String, EObject>();
            top.eAllContents().forEachRemaining(object -> {
                if (object instanceof Element element && element.getId() != null) {
                    byId.putIfAbsent(element.getId(), object);
                }
            });
            byId.put(top.getId(), top);
            return new Inner(top, byId);
        }
    }

    /**
     * Makes the neighbours.
     *
     * @param library an open library
     * @param today the day by which dates are judged
     */
    public Neighbours(Library library, LocalDate today) {
        this.library = library;
        this.today = today;
    }

    /** The day by which dates are judged. */
    public LocalDate today() {
        return today;
    }

    /** The facts of the library. */
    public Catalogue facts() {
        return library.catalogue();
    }

    /** Follows a reference; empty for null, for what leads to nothing and for what is of another type. */
    public <T extends EObject> Optional<T> follow(T reference, Class<T> type) {
        if (reference == null || !reference.eIsProxy()) {
            return Optional.ofNullable(reference);
        }
        return library.addressOf(reference).flatMap(this::element).filter(type::isInstance).map(type::cast);
    }

    /** Returns the element at an address. */
    public Optional<EObject> element(Address address) {
        return top(address.path()).map(top -> inner.compute(address.path(),
                (path, known) -> known != null && known.top() == top ? known : Inner.of(top)))
                .map(index -> index.byId().get(address.id()));
    }

    private Optional<TopElement> top(String path) {
        return library.file(path).flatMap(LoadedFile::root);
    }

    /** Returns where a reference leads, whether there is something or not. */
    public Optional<Address> addressOf(EObject reference) {
        return library.addressOf(reference);
    }

    /** Returns the facts of the file that a reference leads to. */
    public Optional<Row> row(EObject reference) {
        return addressOf(reference).flatMap(address -> facts().entry(address.path())).flatMap(Catalogue.Entry::row);
    }

    /** What people call the file that a reference leads to. */
    public String title(EObject reference) {
        return row(reference).map(Row::title).or(() -> addressOf(reference).map(Address::id)).orElse("something unknown");
    }

    /** Returns the shop, if the library has one. */
    public Optional<Shop> shop() {
        return top(Kind.SHOP.word() + Kind.ENDING).filter(Shop.class::isInstance).map(Shop.class::cast);
    }
}
