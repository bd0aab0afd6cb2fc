// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.Optional;

import org.eclipse.emf.common.command.BasicCommandStack;

/** What was done in a session, with undo and redo. Used on one thread. */
final class History {

    private final BasicCommandStack stack = new BasicCommandStack();
    private boolean isTypingOver;
    private boolean isQuiet;

    BasicCommandStack stack() {
        return stack;
    }

    void onChange(Runnable listener) {
        stack.addCommandStackListener(event -> {
            if (!isQuiet) {
                listener.run();
            }
        });
    }

    /** Does an edit; a keystroke takes the place of the one before it in the same field. */
    void execute(Edit edit, Optional<SharedEdit> shared) {
        if (edit.command().isEmpty()) {
            return;
        }
        takeBackKeystroke(edit);
        var command = edit.command().get();
        if (!command.canExecute()) {
            throw new IllegalArgumentException("'" + edit.label() + "' cannot be done here");
        }
        stack.execute(new Entry(edit, command, shared));
        isTypingOver = false;
    }

    /**
     * A command looks at the value before it when it is first asked, so undoing it leads to before the first keystroke.
     */
    private void takeBackKeystroke(Edit edit) {
        if (!isTypingOver && stack.isSaveNeeded()
                && last().filter(entry -> entry.isTypedIn(edit.typing())).isPresent()) {
            isQuiet = true;
            stack.undo();
            isQuiet = false;
        }
    }

    void endTyping() {
        isTypingOver = true;
    }

    Optional<Entry> last() {
        return stack.getUndoCommand() instanceof Entry entry ? Optional.of(entry) : Optional.empty();
    }

    Optional<Entry> next() {
        return stack.getRedoCommand() instanceof Entry entry ? Optional.of(entry) : Optional.empty();
    }

    Optional<String> undoProblem() {
        return last().isEmpty() ? Optional.of("There is nothing to undo")
                : last().flatMap(Entry::shared).flatMap(SharedEdit::undoProblem);
    }

    Optional<String> redoProblem() {
        return next().isEmpty() ? Optional.of("There is nothing to do again")
                : next().flatMap(Entry::shared).flatMap(SharedEdit::redoProblem);
    }

    void undo() {
        undoProblem().ifPresent(problem -> {
            throw new IllegalStateException(problem);
        });
        last().flatMap(Entry::shared).ifPresentOrElse(SharedEdit::undo, this::undoHere);
    }

    void redo() {
        redoProblem().ifPresent(problem -> {
            throw new IllegalStateException(problem);
        });
        next().flatMap(Entry::shared).ifPresentOrElse(SharedEdit::redo, this::redoHere);
    }

    void undoHere() {
        stack.undo();
        isTypingOver = true;
    }

    void redoHere() {
        stack.redo();
        isTypingOver = true;
    }

    /** Takes the last edit back as if it had never been done. */
    void takeBack() {
        stack.undo();
    }
}
