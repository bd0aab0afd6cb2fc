// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Clip;
import org.benchlore.ui.edit.form.ClipTarget;

/** Copies and pastes steps and ways in the outline; lines of text become steps. */
final class StepClips implements ClipTarget {

    private final StepEdits edits;

    StepClips(StepEdits edits) {
        this.edits = edits;
    }

    @Override
    public Optional<Clip> copy() {
        return edits.copy();
    }

    @Override
    public void remove() {
        edits.remove();
    }

    @Override
    public void paste(Clip clip) {
        edits.paste(clip);
    }

    @Override
    public void paste(List<String> lines) {
        edits.addSteps(lines);
    }
}
