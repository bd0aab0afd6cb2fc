// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;

import org.benchlore.model.Access;
import org.benchlore.model.BookFactory;
import org.benchlore.model.Condition;
import org.benchlore.model.ElementId;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.Recorded;
import org.benchlore.model.TopElement;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;

/**
 * Writes down the work that a procedure or an access needs and that does not come along, as a condition: a reference that
 * is cut must not silently become work that is not done.
 */
final class NeededWords {

    private static final String PREFIX = "left-out-";

    private final Library library;
    private final Predicate<EObject> kept;

    NeededWords(Library library, Predicate<EObject> kept) {
        this.library = library;
        this.kept = kept;
    }

    void write(TopElement top) {
        if (top instanceof Procedure procedure) {
            procedure(procedure);
        } else if (top instanceof Machine machine) {
            machine.getAccesses().forEach(this::access);
        }
    }

    private void procedure(Procedure procedure) {
        var cut = new ArrayList<Condition>();
        cut.addAll(conditions("Before it: ", procedure.getBefore(), procedure));
        cut.addAll(conditions("Done with it: ", procedure.getIncludes(), procedure));
        cut.addAll(conditions("After closing: ", procedure.getAfterClosing(), procedure));
        if (!cut.isEmpty()) {
            procedure.getClosingConditions().addAll(cut);
            if (procedure.getClosingRecorded() == Recorded.NONE) {
                procedure.setClosingRecorded(Recorded.LISTED);
            }
        }
    }

    private void access(Access access) {
        var cut = conditions("After closing: ", access.getAfterClosing(), access);
        if (!cut.isEmpty() && access.getRefit() != null) {
            access.getRefit().getConditions().addAll(cut);
            if (access.getRefit().getConditionsRecorded() == Recorded.NONE) {
                access.getRefit().setConditionsRecorded(Recorded.LISTED);
            }
        }
    }

    private List<Condition> conditions(String when, Collection<Procedure> needed, EObject owner) {
        return needed.stream().filter(target -> !kept.test(target)).map(target -> condition(when, target, owner)).toList();
    }

    private Condition condition(String when, Procedure target, EObject owner) {
        var row = library.addressOf(target).flatMap(library.catalogue()::at);
        var condition = BookFactory.eINSTANCE.createCondition();
        var own = owner instanceof Access access ? access.getId() + "-" : "";
        var id = PREFIX + own + row.map(Row::id).orElse("work");
        condition.setId(id.length() <= ElementId.MAX_LENGTH ? id : id.substring(0, ElementId.MAX_LENGTH).replaceAll("-+$", ""));
        condition.setText(when + "'" + row.map(Row::title).orElse("work that the library does not hold")
                + "'. It is needed and not in this pack: ask the shop that made it.");
        return condition;
    }
}
