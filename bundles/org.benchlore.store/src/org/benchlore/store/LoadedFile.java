// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.TopElement;

/**
 * A snapshot of one file as it was read. Nobody changes it; an editor works on a copy.
 *
 * @param path path below the library
 * @param root its element, empty if the file cannot be read
 * @param hash SHA-256 of its bytes, lower-case hexadecimal
 * @param problems what could not be read
 */
public record LoadedFile(String path, Optional<TopElement> root, String hash, List<FileProblem> problems) {

    /**
     * Tells whether the file may be saved over.
     *
     * @return false if anything in it could not be read, since saving would drop it
     */
    public boolean isWhole() {
        return root.isPresent()
                && problems.stream().allMatch(p -> p.severity() == FileProblem.Severity.MISFIT);
    }
}
