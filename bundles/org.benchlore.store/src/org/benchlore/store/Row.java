// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;

/**
 * What the catalogue knows of one element without loading its file. Look-ups, reverse references and counts come
 * from these facts, and one changed file changes one row.
 *
 * @param address where the element stands
 * @param kind its kind
 * @param title its title; where it has none, a note's first words, else its id
 * @param status a literal of the status of its kind; SUPERSEDED for anything that names its successor; else empty
 * @param date its day, where its kind has one
 * @param invented whether it is demonstration data
 * @param machines machines it speaks of or is for
 * @param components components it speaks of
 * @param codes codes it speaks of, as written: canonical, other forms and codes written by hand
 * @param numbers part, tool or serial numbers and the numbers of documents, as written
 * @param symptoms symptoms it speaks of
 * @param cause the cause it names
 * @param references every element it refers to, in order of appearance, each once
 * @param innerIds ids of the elements in it
 * @param special facts that only its kind has
 * @param naming another number whenever a name by which others call this element, or one in it, changes
 */
public record Row(Address address, Kind kind, String title, String status, Optional<LocalDate> date,
        boolean invented, List<Address> machines, List<Address> components, List<String> codes,
        List<String> numbers, List<String> symptoms, Optional<Address> cause, List<Address> references, Set<String> innerIds,
        Optional<KindFacts> special, int naming) {

    /**
     * Returns the facts of a job record.
     *
     * @return the facts, or empty if it is none
     */
    public Optional<KindFacts.JobFacts> job() {
        return facts(KindFacts.JobFacts.class);
    }

    /**
     * Returns facts that only one kind has.
     *
     * @param <T> which facts
     * @param type which facts
     * @return the facts, or empty if the element is of another kind
     */
    public <T extends KindFacts> Optional<T> facts(Class<T> type) {
        return special.filter(type::isInstance).map(type::cast);
    }

    /**
     * Returns the element's id.
     *
     * @return the id
     */
    public String id() {
        return address.id();
    }

    /**
     * Returns the path of the element's file.
     *
     * @return path below the library
     */
    public String path() {
        return address.path();
    }

    /**
     * Tells whether the element refers to another file's element or to one in it.
     *
     * @param path path of a file
     * @return true if it does
     */
    public boolean refersTo(String path) {
        return references.stream().anyMatch(target -> target.path().equals(path));
    }
}
