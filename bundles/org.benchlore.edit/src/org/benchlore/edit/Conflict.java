// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.List;

import org.benchlore.model.compare.Merge;
import org.benchlore.model.compare.MergeConflict;
import org.benchlore.store.FileProblem;
import org.benchlore.store.LoadedFile;

/** The file of a session is no longer what the session was made from. */
public sealed interface Conflict {

    /**
     * Says what happened and what to do.
     *
     * @return one plain sentence
     */
    String sentence();

    /**
     * Somebody else changed the file.
     *
     * @param theirs the file as it is now
     * @param merge both changes put together
     */
    record Changed(LoadedFile theirs, Merge merge) implements Conflict {

        /**
         * Returns the questions, field by field.
         *
         * @return what both changed differently; empty if both changes go together
         */
        public List<MergeConflict> questions() {
            return merge.result().conflicts();
        }

        @Override
        public String sentence() {
            var questions = questions().size();
            return theirs.path() + " was changed on the disk meanwhile: " + (questions == 0 ? "both changes go together"
                    : "choose between both values in " + questions + (questions == 1 ? " place" : " places"));
        }
    }

    /**
     * The file is gone.
     *
     * @param path path of the file
     */
    record Deleted(String path) implements Conflict {

        @Override
        public String sentence() {
            return path + " was deleted on the disk meanwhile: keep it and save it anew, or close it";
        }
    }

    /**
     * The file can no longer be read whole, so it must not be saved over.
     *
     * @param path path of the file
     * @param problems what cannot be read
     */
    record Unreadable(String path, List<FileProblem> problems) implements Conflict {

        @Override
        public String sentence() {
            return path + " was damaged on the disk meanwhile, and saving would drop what cannot be read:"
                    + " mend the file, then"
                    + " save (" + problems.get(0).reason() + ")";
        }
    }
}
