// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.torque.wrench.Choice;
import org.benchlore.torque.wrench.Wrench;
import org.benchlore.torque.wrench.WrenchRack;

/**
 * One of the shop's own torque wrenches.
 *
 * @param holding where it stands in the shop's file; empty if it has no id there
 * @param tool the tool it is one of
 * @param wrench its range and calibration
 */
public record HeldWrench(Optional<Address> holding, Address tool, Wrench wrench) {

    /**
     * Says why it may not be used for a torque.
     *
     * @param newtonMetres the torque to be set, N·m
     * @param today the day of use
     * @param others the shop's wrenches, of which one that fits is named
     * @return a sentence with what to do; empty if it fits
     */
    public Optional<String> problem(double newtonMetres, LocalDate today, List<HeldWrench> others) {
        var own = new WrenchRack(List.of(wrench)).choose(newtonMetres, today).get(0);
        if (own.fits()) {
            return Optional.empty();
        }
        var instead = new WrenchRack(others.stream().map(HeldWrench::wrench).toList()).choose(newtonMetres, today).stream()
                .filter(Choice::fits).findFirst().map(choice -> " Take " + choice.wrench().name() + " instead.");
        return Optional.of(own.words() + instead.orElse(" No wrench of the shop fits."));
    }
}
