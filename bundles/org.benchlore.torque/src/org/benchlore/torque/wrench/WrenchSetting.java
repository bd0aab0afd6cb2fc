// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

import java.util.List;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.Calculated;
import org.benchlore.torque.StatedTorque;

/**
 * What to set a wrench to so that the fastener gets the stated torque.
 *
 * @param wanted the torque on the fastener
 * @param adapter the adapter
 */
public record WrenchSetting(StatedTorque wanted, Adapter adapter) {

    private static final List<String> ASSUMPTIONS = List.of(
            "pulled square to the wrench, one hand at the middle of the grip",
            "a lever of fixed length; a wrench whose handle pivots or whose length cannot be told does not fit this",
            "a straight extension between drive and socket needs no correction");

    /** The setting. */
    public Calculated setting() {
        return Calculated.of(wanted.newtonMetres() * adapter.factor(), MeasureUnits.NEWTON_METRE);
    }

    /** What was taken for granted, one phrase each. */
    public List<String> assumptions() {
        return ASSUMPTIONS;
    }

    /** Deviation that is permissible for a wrench which can give this setting, where the wrench itself is not known. */
    public Deviation deviation() {
        return Deviation.of(WrenchKind.SETTING, setting().in(MeasureUnits.NEWTON_METRE));
    }

    /** Least and most torque on the fastener within that deviation. */
    public Band band() {
        return deviation().around(wanted.newtonMetres());
    }
}
