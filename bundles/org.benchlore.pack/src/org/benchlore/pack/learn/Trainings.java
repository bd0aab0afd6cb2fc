// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.References;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Kind;
import org.benchlore.model.Person;
import org.benchlore.model.Procedure;
import org.benchlore.model.Shop;
import org.benchlore.model.Training;
import org.benchlore.model.TrainingLevel;
import org.benchlore.pack.PackException;
import org.benchlore.store.BookFormat;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;

/** Brings a learner's progress into the shop: only what goes further than what is written there, and only with a mentor. */
public final class Trainings {

    private final Library library;

    /**
     * Brings progress into a library.
     *
     * @param library the shop's library
     */
    public Trainings(Library library) {
        this.library = library;
    }

    /**
     * What becomes of one task.
     *
     * @param procedure id of the procedure
     * @param title its title, or its id if the library has none
     * @param level how far the learner says
     * @param on since when
     * @param mentor whose initials sign it
     * @param refusal why it is not taken, empty if it is
     */
    public record Line(String procedure, String title, TrainingLevel level, Optional<LocalDate> on, String mentor, String refusal) {

        /**
         * Tells whether it is taken.
         *
         * @return true if there is no refusal
         */
        public boolean isTaken() {
            return refusal.isEmpty();
        }
    }

    /**
     * Returns the people who can learn.
     *
     * @return people of the shop who have not left
     */
    public List<Person> people() {
        return library.top(Kind.SHOP.word()).filter(Shop.class::isInstance).map(Shop.class::cast).map(Shop::getPeople).stream()
                .flatMap(List::stream).filter(person -> person.getLeft() == null && person.getId() != null).toList();
    }

    /**
     * Says what would become of each task.
     *
     * @param personId id of the learner
     * @param progress what came back
     * @return a line a task
     * @throws PackException if the shop has no such person
     */
    public List<Line> preview(String personId, Progress progress) throws PackException {
        var person = person(personId);
        return progress.tasks().stream().map(task -> line(person, task)).toList();
    }

    private Person person(String id) throws PackException {
        return people().stream().filter(person -> person.getId().equals(id)).findFirst().orElseThrow(() -> new PackException(
                "The shop has no person '" + id + "': name one of the people of 'show shop'."));
    }

    private Line line(Person person, Progress.Task task) {
        var row = library.catalogue().byId(task.procedure()).filter(it -> it.kind() == Kind.PROCEDURE);
        return new Line(task.procedure(), row.map(Row::title).orElse(task.procedure()), task.level(), task.on(), task.mentor(),
                refusal(person, task, row));
    }

    private String refusal(Person person, Progress.Task task, Optional<Row> row) {
        if (row.isEmpty()) {
            return "the library has no such procedure";
        }
        if (task.mentor().isBlank()) {
            return "nobody signed it";
        }
        if (people().stream().noneMatch(other -> task.mentor().equalsIgnoreCase(other.getInitials()))) {
            return "nobody of the shop signs with '" + task.mentor() + "'";
        }
        if (task.mentor().equalsIgnoreCase(person.getInitials())) {
            return "the learner cannot sign it";
        }
        return existing(person, task.procedure()).filter(it -> it.getLevel().compareTo(task.level()) >= 0).isPresent()
                ? "the shop has it already" : "";
    }

    private Optional<Training> existing(Person person, String procedure) {
        return person.getTraining().stream().filter(it -> it.getProcedure() != null && library.addressOf(it.getProcedure()).map(Address::id)
                .filter(procedure::equals).isPresent()).findFirst();
    }

    /**
     * Writes what can be taken into the shop's file.
     *
     * @param personId id of the learner
     * @param progress what came back
     * @return a line a task, as {@link #preview} says
     * @throws PackException if the shop has no such person or its file cannot be written
     */
    public List<Line> take(String personId, Progress progress) throws PackException {
        var lines = preview(personId, progress);
        var path = Kind.SHOP.path(Kind.SHOP.word());
        var file = library.file(path).orElseThrow();
        var format = new BookFormat();
        var shop = (Shop) format.read(path, format.write(path, file.root().orElseThrow())).root().orElseThrow();
        var person = shop.getPeople().stream().filter(it -> personId.equals(it.getId())).findFirst().orElseThrow();
        var taken = new ArrayList<Line>(lines.stream().filter(Line::isTaken).toList());
        taken.forEach(line -> put(person, line));
        try {
            if (!taken.isEmpty()) {
                library.save(shop, Optional.of(file.hash()));
            }
            return lines;
        } catch (LibraryException e) {
            throw new PackException("Nothing was taken: " + e.getMessage(), e);
        }
    }

    private void put(Person person, Line line) {
        var training = existing(person, line.procedure()).orElseGet(() -> {
            var made = BookFactory.eINSTANCE.createTraining();
            made.setProcedure((Procedure) References.to(Literals.PROCEDURE, new Address(Kind.PROCEDURE.path(line.procedure()), line.procedure())));
            person.getTraining().add(made);
            return made;
        });
        training.setLevel(line.level());
        training.setOn(line.on().orElse(null));
        training.setMentor(line.mentor());
    }
}
