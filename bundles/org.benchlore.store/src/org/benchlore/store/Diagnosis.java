// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.stream.Collectors;

import org.benchlore.store.FileProblem.Severity;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.ClassNotFoundException;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.PackageNotFoundException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;
import org.xml.sax.SAXParseException;

/** Says in a plain sentence what a file's loading met. */
final class Diagnosis {

    private Diagnosis() {
    }

    static FileProblem unreadable(String path, Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SAXParseException parse) {
                return new FileProblem(path, parse.getLineNumber(), xml(parse.getMessage()), Severity.UNREADABLE);
            }
        }
        if (failure instanceof StackOverflowError) {
            return new FileProblem(path, 0, "the file is nested too deeply to be read", Severity.UNREADABLE);
        }
        return new FileProblem(path, 0, "the file cannot be read: " + failure.getMessage(), Severity.UNREADABLE);
    }

    static FileProblem of(String path, Resource.Diagnostic error) {
        var severity = error instanceof Exception e && isParseError(e) ? Severity.UNREADABLE : severity(error);
        return new FileProblem(path, Math.max(0, error.getLine()), sentence(error), severity);
    }

    private static boolean isParseError(Exception error) {
        return error.getCause() instanceof SAXParseException;
    }

    private static Severity severity(Resource.Diagnostic error) {
        return error instanceof PackageNotFoundException ? Severity.UNREADABLE : Severity.READ_ONLY;
    }

    private static String sentence(Resource.Diagnostic error) {
        if (error instanceof IllegalValueException value) {
            return "'" + value.getFeature().getName() + "' cannot be '" + value.getValue() + "': " + why(value);
        }
        if (error instanceof FeatureNotFoundException feature) {
            return "'" + feature.getName() + "' is not known" + in(feature.getObject())
                    + ": look for a slip of the pen, or use a newer program";
        }
        if (error instanceof UnresolvedReferenceException reference) {
            return "there is no '" + reference.getReference() + "' in this file: mend the id";
        }
        if (error instanceof ClassNotFoundException type) {
            return "'" + type.getName() + "' is no kind of element: look for a slip of the pen";
        }
        if (error instanceof PackageNotFoundException unknown) {
            return "the file belongs to '" + unknown.uri() + "', which this program does not know";
        }
        return error instanceof Exception e && e.getCause() instanceof SAXParseException parse
                ? xml(parse.getMessage()) : ownOrPlain(error.getMessage());
    }

    private static String in(Object owner) {
        return owner instanceof EObject object ? " in a " + object.eClass().getName() : "";
    }

    /** Our own readers of values throw plain sentences; an enumeration's literals are listed. */
    private static String why(IllegalValueException error) {
        if (error.getFeature().getEType() instanceof EEnum words) {
            return "write one of " + words.getELiterals().stream().map(EEnumLiteral::getLiteral)
                    .collect(Collectors.joining(", "));
        }
        for (var cause = error.getCause(); cause != null; cause = cause.getCause()) {
            if (cause instanceof IllegalArgumentException && cause.getMessage() != null) {
                return ownOrPlain(cause.getMessage());
            }
        }
        return "it is not one of the permitted values";
    }

    private static String xml(String message) {
        return "the file is no well-formed XML: " + ownOrPlain(message);
    }

    private static String ownOrPlain(String message) {
        return message == null ? "it cannot be read"
                : message.replaceAll("\\s+", " ").replaceAll(" \\(library:[^)]*\\)$", "").strip();
    }
}
