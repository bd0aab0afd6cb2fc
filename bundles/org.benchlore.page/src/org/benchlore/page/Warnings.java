// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.model.Document;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.Part;
import org.benchlore.model.Procedure;
import org.benchlore.model.Status;
import org.benchlore.model.TopElement;
import org.benchlore.page.Block.Tone;
import org.benchlore.store.FileProblem;
import org.benchlore.store.FileProblem.Severity;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;

/** Writes what must be known before an element is read: invented, withdrawn, superseded, a draft, damaged. */
final class Warnings {

    private static final String USE_INSTEAD = "Use instead";

    private final Scope scope;

    Warnings(Scope scope) {
        this.scope = scope;
    }

    void write(Sheet sheet) {
        if (scope.own().isInvented()) {
            sheet.banner(Tone.INVENTED, Texts.INVENTED);
        }
        standing(sheet);
        readOnly(sheet);
        citedEditions(sheet);
        sheet.labelled(USE_INSTEAD, scope.links().to(replacement(scope.own())));
    }

    private void standing(Sheet sheet) {
        var own = scope.own();
        if (own instanceof Procedure procedure) {
            procedure(procedure, sheet);
        } else if (own instanceof FieldNote note && isSuperseded(note)) {
            sheet.banner(Tone.STOP, "This field note is superseded: do not follow it.");
        } else if (own instanceof Document document && document.getSupersededBy() != null) {
            sheet.banner(Tone.STOP, "This document is superseded: do not work from it.");
        } else if (own instanceof Part part && part.getSupersededBy() != null) {
            sheet.banner(Tone.ATTENTION, "This part number is superseded: order the new one.");
        }
    }

    private static boolean isSuperseded(FieldNote note) {
        return note.getStatus() == NoteStatus.SUPERSEDED || note.getSupersededBy() != null;
    }

    private void procedure(Procedure procedure, Sheet sheet) {
        if (procedure.getStatus() == Status.WITHDRAWN) {
            var reason = scope.links().plain(procedure.getWithdrawnReason(), procedure);
            sheet.banner(Tone.STOP, "This procedure is withdrawn: do not follow it. "
                    + (reason.isEmpty() ? "The reason was not recorded." : "Reason: " + reason));
        } else if (procedure.getStatus() == Status.DRAFT) {
            sheet.banner(Tone.ATTENTION, "Draft: nobody has reviewed this procedure yet.");
        }
    }

    private void readOnly(Sheet sheet) {
        var problems = scope.path().flatMap(scope.library().catalogue()::entry).map(entry -> entry.problems())
                .orElse(List.of()).stream().filter(problem -> problem.severity() != Severity.MISFIT)
                .map(FileProblem::reason).collect(Collectors.joining("; "));
        if (!problems.isEmpty()) {
            sheet.banner(Tone.ATTENTION, "read-only: " + problems);
        }
    }

    /** What rests on an edition that is out of force may be out of force itself; a document may name its forerunners. */
    private void citedEditions(Sheet sheet) {
        if (scope.own() instanceof Document) {
            return;
        }
        var catalogue = scope.library().catalogue();
        scope.path().flatMap(catalogue::entry).flatMap(entry -> entry.row()).map(Row::references).orElse(List.of()).stream()
                .flatMap(target -> catalogue.at(target).stream())
                .filter(row -> row.kind() == Kind.DOCUMENT && row.status().equals(NoteStatus.SUPERSEDED.getLiteral()))
                .map(Row::title).distinct().forEach(title -> sheet.banner(Tone.ATTENTION, "Cites a superseded document: "
                        + title + ". Compare with the edition in force first."));
    }

    private static EObject replacement(TopElement own) {
        if (own instanceof Procedure procedure) {
            return procedure.getReplacedBy();
        }
        if (own instanceof FieldNote note) {
            return note.getSupersededBy();
        }
        if (own instanceof Document document) {
            return document.getSupersededBy();
        }
        return own instanceof Part part ? part.getSupersededBy() : null;
    }
}
