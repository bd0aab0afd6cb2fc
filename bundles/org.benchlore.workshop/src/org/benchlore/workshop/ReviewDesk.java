// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.check.Problem;
import org.benchlore.check.Report;
import org.benchlore.check.Severity;
import org.benchlore.check.review.PackEntry;
import org.benchlore.check.review.PackRegister;
import org.benchlore.check.review.Reviews;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.desk.QuickChange;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.Person;
import org.benchlore.model.Procedure;
import org.benchlore.model.Shop;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;

/**
 * Reviews procedures, withdraws them and makes them drafts again, each as one change that is saved at once and can be
 * taken back. One that is being edited is changed there. Refusals are plain sentences of an
 * {@link IllegalArgumentException}.
 */
public final class ReviewDesk {

    private final OpenLibrary open;

    /**
     * Somebody who can review.
     *
     * @param at where the person stands in the shop
     * @param name what people call the person
     */
    public record Reviewer(Address at, String name) {
    }

    /**
     * What a reviewer looks at.
     *
     * @param procedure the procedure as it is now, unsaved changes with it
     * @param standing where it stands
     * @param since how it differs from what was reviewed; empty if no copy of that was kept
     * @param problems what the rules find in it, without what a review mends
     * @param packs the packs that carry it, oldest first
     */
    public record Look(Procedure procedure, Reviews.Standing standing, Optional<Comparison> since, Report problems,
            List<PackEntry> packs) {

        /** What the rules find that stands against a review. */
        public List<String> errors() {
            return ReviewDesk.errors(problems);
        }
    }

    ReviewDesk(OpenLibrary open) {
        this.open = open;
    }

    /**
     * Looks at a procedure.
     *
     * @param path path of its file
     * @return what a reviewer looks at; empty if it is no procedure that can be read
     */
    public Optional<Look> look(String path) {
        return open.sessions().current(path).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .map(procedure -> new Look(procedure, Reviews.standing(procedure),
                        open.comparisons().sinceReview(procedure), problems(path), packs(procedure.getId())));
    }

    /**
     * Says where a procedure stands.
     *
     * @param path path of its file
     * @return where it stands; empty if it is no procedure that can be read
     */
    public Optional<Reviews.Standing> standing(String path) {
        return open.sessions().current(path).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .map(Reviews::standing);
    }

    private Report problems(String path) {
        var checker = open.checks().checker();
        return Reviews.leftFor(open.sessions().find(path).map(checker::of).orElseGet(() -> checker.of(path)));
    }

    private List<PackEntry> packs(String id) {
        return PackRegister.in(open.library().root()).carrying(id);
    }

    private static List<String> errors(Report report) {
        return report.open().stream().filter(problem -> problem.severity() == Severity.ERROR).map(Problem::sentence)
                .toList();
    }

    /** Everybody of the shop. */
    public List<Reviewer> people() {
        return open.library().catalogue().rows(Kind.SHOP).flatMap(row -> open.library().file(row.path()).stream())
                .flatMap(file -> file.root().filter(Shop.class::isInstance).map(Shop.class::cast).stream()
                        .flatMap(shop -> shop.getPeople().stream()).map(person -> reviewer(file, person)))
                .toList();
    }

    private static Reviewer reviewer(LoadedFile shop, Person person) {
        return new Reviewer(new Address(shop.path(), person.getId()),
                person.getTitle() == null ? person.getId() : person.getTitle());
    }

    /**
     * Says what stands against a review.
     *
     * @param look what the reviewer looks at
     * @param reviewer who reviews it
     * @return sentences; empty if it may be reviewed
     */
    public List<String> obstacles(Look look, Address reviewer) {
        return Reviews.obstacles(open.library(), look.procedure(), reviewer, look.errors());
    }

    /**
     * Marks a procedure as reviewed.
     *
     * @param path path of its file
     * @param reviewer who reviewed it
     * @param day the day
     * @return takes it back; empty if it is being edited, where it is saved and undone with the rest
     * @throws LibraryException if the file cannot be saved
     */
    public Optional<QuickChange> review(String path, Address reviewer, LocalDate day) throws LibraryException {
        return QuickChange.make(open.sessions(), path, session -> Reviews.review(session, reviewer, day, errors(session)));
    }

    private List<String> errors(EditSession session) {
        return errors(Reviews.leftFor(open.checks().checker().of(session)));
    }

    /**
     * Withdraws a procedure.
     *
     * @param path path of its file
     * @param reason why
     * @param successor what is followed instead
     * @return takes it back; empty if it is being edited
     * @throws LibraryException if the file cannot be saved
     */
    public Optional<QuickChange> withdraw(String path, String reason, Optional<Address> successor)
            throws LibraryException {
        return QuickChange.make(open.sessions(), path, session -> Reviews.withdraw(session, reason, successor));
    }

    /**
     * Makes a procedure a draft again.
     *
     * @param path path of its file
     * @return takes it back; empty if it is being edited
     * @throws LibraryException if the file cannot be saved
     */
    public Optional<QuickChange> reopen(String path) throws LibraryException {
        return QuickChange.make(open.sessions(), path, Reviews::reopen);
    }

    /**
     * Keeps the sum of a procedure's text that was reviewed without one.
     *
     * @param path path of its file
     * @return what people call it
     * @throws LibraryException if the file cannot be saved
     */
    public String keepSum(String path) throws LibraryException {
        QuickChange.make(open.sessions(), path, Reviews::keepSum);
        return open.sessions().current(path).map(ElementTitle::of).orElse(path);
    }
}
