// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Fastening;
import org.benchlore.model.Measurement;
import org.benchlore.model.Outcome;
import org.benchlore.model.Procedure;
import org.benchlore.model.Titled;
import org.benchlore.model.Way;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Says in plain words what a field is called, what its value is and where an element stands. */
public final class Words {

    /** What is said where nothing is written. */
    public static final String NOTHING = "nothing";

    private static final int LONGEST_SUMMARY = 160;
    private static final Map<EStructuralFeature, String> FIELDS = Map.ofEntries(
            Map.entry(Literals.STAGE__TORQUE, "tightening torque"), Map.entry(Literals.STAGE__ANGLE, "tightening angle"),
            Map.entry(Literals.MEASUREMENT__LOW, "lower limit"), Map.entry(Literals.MEASUREMENT__HIGH, "upper limit"),
            Map.entry(Literals.FASTENING__RENEW, "renew rule"), Map.entry(Literals.FIELD_NOTE__SEEN, "times seen"),
            Map.entry(Literals.WORK__MINUTES_USUAL, "usual time"), Map.entry(Literals.WORK__MINUTES_BAD, "bad time"),
            Map.entry(Literals.MACHINE__FUNCTIONS, "chains"), Map.entry(Literals.COMPONENT__FUNCTIONS, "chains"),
            Map.entry(Literals.HAZARD__SIGNAL, "signal word"), Map.entry(Literals.STEP__SIGN_OFF, "sign-off"));

    private static final String COMMA = ", ";

    private final Function<Address, Optional<String>> names;
    private final String between;

    /**
     * Makes words.
     *
     * @param names gives the title of an element of another file, where it is known
     */
    public Words(Function<Address, Optional<String>> names) {
        this(names, COMMA);
    }

    private Words(Function<Address, Optional<String>> names, String between) {
        this.names = names;
        this.between = between;
    }

    /** Returns the same words with another mark between the parts of a place, so that the parts can be told apart. */
    Words marked(String mark) {
        return new Words(names, mark);
    }

    /** Makes words that call elements of other files by their ids. */
    public Words() {
        this(address -> Optional.empty());
    }

    /**
     * Returns what a field is called.
     *
     * @param feature a field of the model
     * @return lower-case words
     */
    public String field(EStructuralFeature feature) {
        return FIELDS.getOrDefault(feature, split(feature.getName()));
    }

    /** Programs call it a function, people a chain. */
    private static String kind(EObject object) {
        return object.eClass() == Literals.FUNCTION ? "chain" : split(object.eClass().getName());
    }

    private static String split(String name) {
        return name.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    }

    /**
     * Returns the value of a field.
     *
     * @param owner an element
     * @param feature one of its fields
     * @return the value in words, {@link #NOTHING} where there is none
     */
    public String value(EObject owner, EStructuralFeature feature) {
        if (feature instanceof EReference reference && reference.isContainment()) {
            return joined(Targets.objects(owner, reference).stream().map(this::summary).toList());
        }
        return joined(Same.texts(owner, feature).stream().map(text -> value(feature, text)).toList());
    }

    /**
     * Returns one value of a field.
     *
     * @param feature a field
     * @param text the value as it is written, or the address of a reference
     * @return the value in words
     */
    public String value(EStructuralFeature feature, String text) {
        if (feature instanceof EReference) {
            return text.startsWith("#") ? text.substring(1) : other(text);
        }
        var type = ((EAttribute) feature).getEAttributeType();
        if (type.getInstanceClass() == boolean.class) {
            return Boolean.parseBoolean(text) ? "yes" : "no";
        }
        return type instanceof org.eclipse.emf.ecore.EEnum && isWord(text)
                ? text.toLowerCase(Locale.ROOT).replace('_', ' ') : text;
    }

    /** Signal words are written in capitals wherever they stand. */
    private static boolean isWord(String text) {
        return !text.matches("DANGER|WARNING|CAUTION|NOTICE|J1939|J2012|ISO14229");
    }

    private String other(String text) {
        var address = Address.parse(text);
        return names.apply(address).orElse(address.id());
    }

    static String joined(List<String> values) {
        return values.isEmpty() ? NOTHING : String.join(", ", values);
    }

    /**
     * Says in one line what an element holds.
     *
     * @param object an element
     * @return its name and its short values
     */
    public String summary(EObject object) {
        var fields = object.eClass().getEAllStructuralFeatures().stream()
                .filter(feature -> object.eIsSet(feature) && feature != Literals.ELEMENT__ID)
                .map(feature -> value(object, feature)).collect(Collectors.joining(", "));
        return fields.isEmpty() ? kind(object)
                : fields.length() <= LONGEST_SUMMARY ? fields : fields.substring(0, LONGEST_SUMMARY) + "…";
    }

    /**
     * Says where an element stands in its file.
     *
     * @param object an element
     * @return words such as {@code step 3, fastening drain plug}; empty for the file's own element
     */
    public String place(EObject object) {
        var container = object.eContainer();
        if (container == null) {
            return "";
        }
        var above = place(container);
        return isTold(object) ? join(above, label(object)) : above;
    }

    /**
     * Says where a field stands in its file.
     *
     * @param owner an element
     * @param feature one of its fields
     * @return words such as {@code step 3, fastening drain plug, tightening torque}
     */
    public String place(EObject owner, EStructuralFeature feature) {
        return join(place(owner), field(feature));
    }

    private String join(String above, String own) {
        return above.isEmpty() ? own : above + between + own;
    }

    /** A procedure with one way has its steps, as people see it; a single stage or what is in it is not numbered. */
    private static boolean isTold(EObject object) {
        if (object.eContainingFeature() == Literals.WAY__WORK) {
            return false;
        }
        boolean only = object instanceof Way && object.eContainer() instanceof Procedure
                || object.eContainingFeature() == Literals.FASTENING__STAGES;
        return !only || siblings(object).size() > 1;
    }

    private static List<EObject> siblings(EObject object) {
        return Targets.objects(object.eContainer(), object.eContainmentFeature());
    }

    /**
     * Says what an element is called among its neighbours.
     *
     * @param object an element within a file
     * @return its kind with its name, or with its number where it has none
     */
    public String label(EObject object) {
        var feature = object.eContainmentFeature();
        if (feature != null && !feature.isMany()) {
            return field(feature);
        }
        var kind = kind(object);
        return name(object).map(name -> kind + " " + name)
                .orElseGet(() -> feature == null ? kind : kind + " " + (siblings(object).indexOf(object) + 1));
    }

    private static Optional<String> name(EObject object) {
        String name = null;
        if (object instanceof Titled titled) {
            name = titled.getTitle();
        } else if (object instanceof Fastening fastening) {
            name = fastening.getPlace();
        } else if (object instanceof Measurement measurement) {
            name = measurement.getWhat();
        } else if (object instanceof Outcome outcome) {
            name = outcome.getAnswer();
        }
        return Optional.ofNullable(name).filter(text -> !text.isBlank());
    }
}
