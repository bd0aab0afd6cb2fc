// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandWrapper;

/** One entry of a session's history: a command with its label, and what binds it to its neighbours. */
final class Entry extends CommandWrapper {

    private final Optional<String> typing;
    private final Optional<SharedEdit> shared;

    Entry(Edit edit, Command command, Optional<SharedEdit> shared) {
        super(edit.label(), edit.label(), command);
        this.typing = edit.typing();
        this.shared = shared;
    }

    Optional<SharedEdit> shared() {
        return shared;
    }

    boolean isTypedIn(Optional<String> field) {
        return field.isPresent() && typing.equals(field);
    }
}
