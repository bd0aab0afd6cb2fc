// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.model.Element;
import org.benchlore.model.FaultCode;
import org.benchlore.model.Fastening;
import org.benchlore.model.Kind;
import org.benchlore.model.Measurement;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.Status;
import org.benchlore.model.Step;
import org.benchlore.model.Titled;
import org.benchlore.model.TopElement;
import org.benchlore.store.ElementTitle;
import org.benchlore.model.Work;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;

/** What an element is called where it is mentioned. */
final class Names {

    private Names() {
    }

    /** Returns a title; of what must not be followed any more it says so. */
    static String of(Row row) {
        if (row.kind() == Kind.PROCEDURE && row.status().equals(Status.WITHDRAWN.getLiteral())) {
            return row.title() + " (withdrawn)";
        }
        return row.status().equals(NoteStatus.SUPERSEDED.getLiteral())
                ? row.title() + " (superseded)" : row.title();
    }

    static String of(EObject element) {
        if (element instanceof FaultCode code && isWritten(code.getCode())) {
            return isWritten(code.getTitle()) ? code.getCode() + ": " + code.getTitle() : code.getCode();
        }
        if (element instanceof TopElement top) {
            return top.getId() == null ? or(top.getTitle(), top) : ElementTitle.of(top);
        }
        if (element instanceof Titled titled) {
            return or(titled.getTitle(), titled);
        }
        return ofInner(element);
    }

    private static String ofInner(EObject element) {
        if (element instanceof Fastening fastening) {
            return or(fastening.getPlace(), fastening);
        }
        if (element instanceof Measurement measurement) {
            return or(measurement.getWhat(), measurement);
        }
        if (element instanceof Step step) {
            return "step " + number(step);
        }
        return element instanceof Element inner ? or("", inner) : Texts.UNTITLED;
    }

    private static String or(String title, Element element) {
        return isWritten(title) ? title : element.getId() == null ? Texts.UNTITLED : element.getId();
    }

    private static boolean isWritten(String text) {
        return text != null && !text.isBlank();
    }

    /** Returns the number under which a step stands in its work, counted from 1. */
    static String number(Step step) {
        return step.eContainer() instanceof Work work ? String.valueOf(work.getSteps().indexOf(step) + 1) : "?";
    }
}
