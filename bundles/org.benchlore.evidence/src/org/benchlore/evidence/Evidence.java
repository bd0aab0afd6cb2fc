// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.store.Changes;
import org.benchlore.store.KindFacts.Life;
import org.benchlore.store.KindFacts.PartFacts;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/**
 * What the shop's own jobs and notes say, counted when it is asked over facts that are kept up with every change: one
 * changed file is one row taken out and one put in. Safe to use from several threads.
 */
public final class Evidence implements AutoCloseable {

    private final Knowledge knowledge = new Knowledge();
    private Runnable stop = () -> { };

    /**
     * Takes in facts.
     *
     * @param rows rows of a catalogue
     */
    public Evidence(Stream<Row> rows) {
        rows.forEach(knowledge::put);
    }

    /**
     * Takes in the facts of a library and every change of it.
     *
     * @param library an open library
     * @return evidence that follows it until it is closed
     */
    public static Evidence following(Library library) {
        var evidence = new Evidence(Stream.empty());
        synchronized (evidence) {
            evidence.stop = library.onChange(changes -> evidence.take(changes, library));
            library.catalogue().rows().forEach(evidence.knowledge::put);
        }
        return evidence;
    }

    private synchronized void take(Changes changes, Library library) {
        changes.removed().forEach(knowledge::remove);
        var catalogue = library.catalogue();
        changes.changed().forEach(path -> change(path, catalogue.entry(path).flatMap(entry -> entry.row())));
    }

    /**
     * Takes in one changed file.
     *
     * @param path path of the file
     * @param row its facts now, or empty if it is gone or cannot be read
     */
    public synchronized void change(String path, Optional<Row> row) {
        knowledge.remove(path);
        row.ifPresent(knowledge::put);
    }

    /**
     * Counts.
     *
     * @param question what is asked
     * @param rules how the shop counts
     * @return what is known
     */
    public synchronized Findings about(Question question, CountingRules rules) {
        return new Counting(knowledge, rules, question).answer();
    }

    /**
     * Returns the number of the part that is in a unit, where a job says so.
     *
     * @param unit the unit
     * @param component the component
     * @return the part fitted last or read last
     */
    public synchronized Optional<Address> partIn(Address unit, Address component) {
        return new UnitHistory(knowledge.jobs(unit), component, new Blame(knowledge::componentOfCause),
                knowledge.parts(component), LocalDate.MAX).partNow();
    }

    /**
     * Returns a part's life data.
     *
     * @param part the part
     * @return shape and scale as written, or empty
     */
    public synchronized Optional<Life> life(Address part) {
        return knowledge.part(part).flatMap(PartFacts::life);
    }

    @Override
    public void close() {
        stop.run();
    }
}
