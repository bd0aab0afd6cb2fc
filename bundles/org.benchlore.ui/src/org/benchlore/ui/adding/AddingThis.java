// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.benchlore.model.Address;
import org.benchlore.model.Addition;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.ui.Failures;
import org.benchlore.ui.note.Standing;
import org.benchlore.ui.plan.Wanted;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.status.LastChange;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;

/** Weighs what is worth adding to what a command names, else to the procedure, unit, machine or note in front. */
public final class AddingThis {

    private final IWorkbenchWindow window;

    /**
     * Makes the action.
     *
     * @param window the window
     */
    public AddingThis(IWorkbenchWindow window) {
        this.window = window;
    }

    /**
     * Does it, or says what can be weighed.
     *
     * @param parameters of the command: {@code unit}, {@code procedures}, {@code open}, {@code done}, {@code job}; ids with
     *            commas between them; all may be missing
     */
    public void run(Map<String, String> parameters) {
        window.getService(LibrarySession.class).current().ifPresent(opened -> {
            var library = opened.library().library();
            var unit = Optional.ofNullable(parameters.get("unit")).filter(id -> !id.isBlank());
            if (unit.isPresent()) {
                var wanted = new Wanted(unit.get(), ids(parameters, "procedures"), ids(parameters, "open"), ids(parameters, "done"));
                show(view -> view.use(wanted.knownTo(library.catalogue()), Optional.ofNullable(parameters.get("job"))));
                return;
            }
            new Standing(window.getActivePage(), library).element().flatMap(at -> library.catalogue().at(at))
                    .flatMap(row -> wanted(library, row)).ifPresentOrElse(more -> show(view -> view.change(more)),
                            () -> window.getService(LastChange.class).say(window, Messages.nothingToWeigh));
        });
    }

    private static List<String> ids(Map<String, String> parameters, String name) {
        return Arrays.stream(Optional.ofNullable(parameters.get(name)).orElse("").split("[, ]+")).filter(id -> !id.isEmpty())
                .distinct().toList();
    }

    /** How what is picked changes by an element; empty if nothing can be weighed for it. */
    static Optional<UnaryOperator<Wanted>> wanted(Library library, Row row) {
        if (row.kind() == Kind.PROCEDURE) {
            return Optional.of(it -> onItsMachine(it, row).adding(row.id()));
        }
        if (Wanted.isSubject(row.kind())) {
            return Optional.of(it -> it.on(row.id()));
        }
        return library.top(row.id()).filter(FieldNote.class::isInstance).map(FieldNote.class::cast)
                .flatMap(note -> noted(library, note)).map(wanted -> it -> wanted);
    }

    /** A procedure of one type of machine needs no question on what. */
    private static Wanted onItsMachine(Wanted wanted, Row procedure) {
        return wanted.subject().isEmpty() && procedure.machines().size() == 1
                ? wanted.on(procedure.machines().iterator().next().id()) : wanted;
    }

    /** What a note says is worth adding, while doing what it names. */
    private static Optional<Wanted> noted(Library library, FieldNote note) {
        var work = new ArrayList<String>();
        note.getAddWhileDoing().stream().map(Addition::getWhileDoing).filter(it -> it != null)
                .flatMap(it -> library.addressOf(it).stream()).map(Address::id).filter(id -> !work.contains(id)).forEach(work::add);
        var subject = Optional.ofNullable(note.getUnit()).flatMap(library::addressOf)
                .or(() -> Optional.ofNullable(note.getMachine()).flatMap(library::addressOf));
        return work.isEmpty() || subject.isEmpty() ? Optional.empty()
                : Optional.of(new Wanted(subject.get().id(), work, List.of(), List.of()));
    }

    /** What is told to the view. */
    private interface Telling {

        void to(AddingView view);
    }

    private void show(Telling telling) {
        try {
            telling.to(AddingView.show(window.getActivePage()));
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
    }
}
