// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.DoneWork;
import org.benchlore.model.MeasuredValue;
import org.benchlore.model.Round;
import org.benchlore.model.Tightened;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/** Finds what a round holds already for a line or a box of its card. */
public final class Recorded {

    private final Library library;

    /**
     * Makes it.
     *
     * @param library the library that references lead into
     */
    public Recorded(Library library) {
        this.library = library;
    }

    /**
     * Finds what was written for a line.
     *
     * @param round a round
     * @param line what the line says when it is ticked
     * @return the entry, or empty if the line is not ticked
     */
    public Optional<DoneWork> done(Round round, Ticked line) {
        return round.getDone().stream().filter(done -> leads(subject(done, line), line.address()))
                .skip(line.before()).findFirst();
    }

    private static EObject subject(DoneWork done, Ticked line) {
        return line instanceof Ticked.Done ? done.getProcedure()
                : line instanceof Ticked.Opened ? done.getOpened() : done.getClosed();
    }

    /**
     * Finds what was measured.
     *
     * @param round a round
     * @param asked where the measurement stands
     * @return the entry, or empty if nothing was written yet
     */
    public Optional<MeasuredValue> measured(Round round, Address asked) {
        return round.getMeasured().stream().filter(value -> leads(value.getMeasurement(), asked)).findFirst();
    }

    /**
     * Finds how a fastening was tightened.
     *
     * @param round a round
     * @param asked where the fastening stands
     * @return the entry, or empty if nothing was written yet
     */
    public Optional<Tightened> tightened(Round round, Address asked) {
        return round.getTightened().stream().filter(one -> leads(one.getFastening(), asked)).findFirst();
    }

    /**
     * Tells whether a reference leads somewhere.
     *
     * @param reference a reference, may be null
     * @param place an address
     * @return true if it does
     */
    public boolean leads(EObject reference, Address place) {
        return library.addressOf(reference).filter(place::equals).isPresent();
    }
}
