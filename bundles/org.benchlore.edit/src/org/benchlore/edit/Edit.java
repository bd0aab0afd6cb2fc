// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.Optional;

import org.eclipse.emf.common.command.Command;

/**
 * One thing that a person does to an element, ready to be done by {@link EditSession#execute}.
 *
 * @param label what it does, as it follows 'Undo': {@code change tightening torque}
 * @param command the EMF command, or empty if nothing would change
 * @param typing where it is one of many keystrokes in a field, the name of that field; such edits are undone together
 */
public record Edit(String label, Optional<Command> command, Optional<String> typing) {

    static Edit of(String label, Command command) {
        return new Edit(label, Optional.of(command), Optional.empty());
    }

    static Edit nothing(String label) {
        return new Edit(label, Optional.empty(), Optional.empty());
    }

    /**
     * Returns the same edit as one of many keystrokes in a field.
     *
     * @param field names the field
     * @return the edit, which joins the one before it in the same field
     */
    Edit typed(String field) {
        return new Edit(label, command, Optional.of(field));
    }
}
