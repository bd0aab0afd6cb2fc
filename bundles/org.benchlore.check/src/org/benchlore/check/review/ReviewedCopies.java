// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.review;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.model.compare.Sentences;
import org.benchlore.model.compare.Words;
import org.benchlore.store.BookFormat;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Copies of procedures as they were reviewed, one file each, named by the sum of the reviewed text. Without the copy one
 * still knows that a procedure was changed, but not how.
 */
public final class ReviewedCopies {

    private final Path folder;
    private final BookFormat format = new BookFormat();

    /**
     * Makes the copies of a folder.
     *
     * @param folder a folder of their own, made when the first copy is kept
     */
    public ReviewedCopies(Path folder) {
        this.folder = folder;
    }

    /**
     * Keeps a procedure as it is now. Kept twice it is written once.
     *
     * @param procedure a procedure that is being reviewed
     * @throws IOException if the folder cannot be written
     */
    public void keep(Procedure procedure) throws IOException {
        var file = file(ReviewedText.sum(procedure));
        if (Files.exists(file)) {
            return;
        }
        Files.createDirectories(folder);
        var temporary = Files.createTempFile(folder, "copy", ".tmp");
        Files.write(temporary, format.write(Kind.PROCEDURE.path(procedure.getId()), procedure));
        Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /**
     * Finds the copy that a procedure was reviewed as.
     *
     * @param procedure a procedure
     * @return the copy; empty if none was kept or it is not what its name says
     */
    public Optional<Procedure> of(Procedure procedure) {
        var sum = procedure.getReviewedHash();
        if (sum == null || !sum.matches("[0-9a-f]{64}") || !Files.exists(file(sum))) {
            return Optional.empty();
        }
        try {
            return format.read(Kind.PROCEDURE.path(procedure.getId()), Files.readAllBytes(file(sum))).root()
                    .filter(Procedure.class::isInstance).map(Procedure.class::cast)
                    .filter(copy -> ReviewedText.sum(copy).equals(sum));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /**
     * Says what was changed since the review.
     *
     * @param procedure a procedure
     * @param words names elements of other files
     * @return sentences, without what a review itself writes; empty if nothing was changed, or no copy was kept
     */
    public List<String> changes(Procedure procedure, Words words) {
        return of(procedure).map(copy -> Sentences.between(bare(copy), bare(procedure), words)).orElse(List.of());
    }

    /** The procedure without what a review writes. */
    private static Procedure bare(Procedure procedure) {
        var copier = new EcoreUtil.Copier(false, true);
        var bare = (Procedure) copier.copy(procedure);
        copier.copyReferences();
        ReviewedText.leftOut().stream().filter(feature -> feature.getEContainingClass().isSuperTypeOf(bare.eClass()))
                .forEach(bare::eUnset);
        bare.setId(procedure.getId());
        return bare;
    }

    private Path file(String sum) {
        return folder.resolve(sum + ".reviewed");
    }
}
