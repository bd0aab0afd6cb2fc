// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

import org.benchlore.check.review.ReviewedCopies;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.model.Titled;
import org.benchlore.model.TopElement;
import org.benchlore.model.compare.Sentences;
import org.benchlore.model.compare.Words;
import org.benchlore.store.BookFormat;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;
import org.benchlore.store.UnknownId;

/**
 * Says in words how versions of an element differ: as it is now, as it was reviewed, another element of its kind, or an
 * older copy of its file. Refusals are plain sentences of an {@link IllegalArgumentException}.
 */
public final class Comparisons {

    private final Library library;
    private final ReviewedCopies copies;
    private final BookFormat format = new BookFormat();

    /**
     * A version of an element.
     *
     * @param name what it is called
     * @param element the version; nobody changes it
     */
    public record Version(String name, TopElement element) {
    }

    Comparisons(OpenLibrary open) {
        this.library = open.library();
        this.copies = open.reviewedCopies();
    }

    /** Names elements of other files by their titles. */
    public Words words() {
        return new Words(this::title);
    }

    private Optional<String> title(Address address) {
        return library.element(address).filter(Titled.class::isInstance).map(element -> ((Titled) element).getTitle());
    }

    /**
     * Compares two versions.
     *
     * @param before the one
     * @param after the other one
     * @return how the other one differs
     * @throws IllegalArgumentException if they are of two kinds
     */
    public Comparison between(Version before, Version after) {
        if (before.element().eClass() != after.element().eClass()) {
            throw new IllegalArgumentException(before.name() + " is a " + kind(before) + ", " + after.name() + " a "
                    + kind(after) + ": only elements of one kind are compared");
        }
        return new Comparison(before.name(), after.name(), Sentences.between(before.element(), after.element(), words()));
    }

    private static String kind(Version version) {
        return Kind.of(version.element().eClass()).map(Kind::word).orElse("thing");
    }

    /**
     * Finds a version by what somebody writes.
     *
     * @param word the id of an element of the library, or the path of a file that holds one
     * @return the version
     * @throws IllegalArgumentException if there is none
     */
    public Version find(String word) {
        return library.top(word).map(element -> new Version("'" + ElementTitle.of(element) + "'", element))
                .orElseGet(() -> file(path(word)));
    }

    private Path path(String word) {
        try {
            return Path.of(word);
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException(nothing(word), e);
        }
    }

    private String nothing(String word) {
        return new UnknownId(library.catalogue()).says(word, "element and no file");
    }

    /**
     * Reads a version from a file that need not lie in the library.
     *
     * @param file an older copy, say
     * @return the version
     * @throws IllegalArgumentException if it cannot be read as an element
     */
    public Version file(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new IllegalArgumentException(nothing(file.toString()));
        }
        try {
            var bytes = Files.readAllBytes(file);
            var first = element(file, format.read(Kind.PROCEDURE.path("copy"), bytes));
            // What it refers to is told from where such files lie.
            var home = Kind.of(first.eClass()).orElseThrow().path(first.getId());
            return new Version(file.toString(), element(file, format.read(home, bytes)));
        } catch (IOException e) {
            throw new IllegalArgumentException(file + " cannot be read: check its permissions", e);
        }
    }

    private static TopElement element(Path file, LoadedFile read) {
        return read.root().orElseThrow(() -> new IllegalArgumentException(file + " holds no element of a library: "
                + read.problems().get(0).reason()));
    }

    /**
     * Finds a procedure as it was reviewed.
     *
     * @param procedure a procedure as it is now
     * @return the version; empty if no copy was kept
     */
    public Optional<Version> reviewed(Procedure procedure) {
        return copies.of(procedure).map(copy -> new Version("'" + ElementTitle.of(copy) + "' as it was reviewed"
                + (procedure.getReviewedOn() == null ? "" : " on " + procedure.getReviewedOn()), copy));
    }

    /**
     * Compares a procedure with the copy that it was reviewed as. What a review itself writes is left out.
     *
     * @param procedure a procedure as it is now
     * @return how it differs from the copy; empty if no copy was kept
     */
    public Optional<Comparison> sinceReview(Procedure procedure) {
        return reviewed(procedure).map(copy -> new Comparison(copy.name(), "'" + ElementTitle.of(procedure) + "' as it is now",
                copies.changes(procedure, words())));
    }
}
