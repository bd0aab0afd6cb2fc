// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import java.util.Optional;

import org.benchlore.torque.Bearing;
import org.benchlore.torque.BoltThread;
import org.benchlore.torque.Friction;

/**
 * Friction and the ring on which the head rubs, as entered; blank where nothing is known.
 *
 * @param threadFriction in the thread, and under the head where none stands for that
 * @param headFriction under head or nut; blank if it is the same
 * @param bearing outer diameter and hole in mm; blank for a plain hexagon head
 */
public record HeadInput(String threadFriction, String headFriction, String bearing) {

    /** Nothing is known. */
    public static final HeadInput UNKNOWN = new HeadInput("", "", "");

    Optional<Friction> friction() {
        boolean hasHead = !WrongInput.isBlank(headFriction);
        if (WrongInput.isBlank(threadFriction)) {
            if (hasHead) {
                throw new WrongInput(Field.FRICTION, "Friction is given under the head but not in the thread: write "
                        + "both, for example 0.12, or leave both out.");
            }
            return Optional.empty();
        }
        if (!hasHead) {
            return Optional.of(WrongInput.at(Field.FRICTION,
                    () -> Friction.both(Friction.read("friction", threadFriction))));
        }
        double thread = WrongInput.at(Field.FRICTION, () -> Friction.read("thread friction", threadFriction));
        double head = WrongInput.at(Field.HEAD_FRICTION, () -> Friction.read("head friction", headFriction));
        return Optional.of(new Friction(thread, head));
    }

    Bearing bearing(BoltThread bolt) {
        return WrongInput.isBlank(bearing) ? Bearing.hexagon(bolt)
                : WrongInput.at(Field.BEARING, () -> Bearing.parse(bearing));
    }
}
