// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Clip;

/** What is done to steps and ways in the outline; lines of text become steps. */
final class StepClips implements OutlineEdits {

    private final StepEdits edits;

    StepClips(StepEdits edits) {
        this.edits = edits;
    }

    @Override
    public void addNext() {
        edits.addStep();
    }

    @Override
    public void duplicate() {
        edits.duplicate();
    }

    @Override
    public void move(int by) {
        edits.move(by);
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
