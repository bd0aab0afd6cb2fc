// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EClass;

/**
 * The kinds of top-level elements. A kind and an id alone decide the path of a file: {@code parts/ID.xmi},
 * {@code notes/YEAR/ID.xmi}, and for the two kinds of which a library has one, {@code shop.xmi} and
 * {@code glossary.xmi}.
 */
public enum Kind {
    /** A procedure of the shop. */
    PROCEDURE("procedure", "procedures", BookPackage.Literals.PROCEDURE),
    /** A field note. */
    NOTE("note", "notes", BookPackage.Literals.FIELD_NOTE),
    /** A machine type. */
    MACHINE("machine", "machines", BookPackage.Literals.MACHINE),
    /** One machine with its own number. */
    UNIT("unit", "units", BookPackage.Literals.UNIT),
    /** A fault code. */
    CODE("code", "codes", BookPackage.Literals.FAULT_CODE),
    /** A part. */
    PART("part", "parts", BookPackage.Literals.PART),
    /** A tool. */
    TOOL("tool", "tools", BookPackage.Literals.TOOL),
    /** A supply. */
    SUPPLY("supply", "supplies", BookPackage.Literals.SUPPLY),
    /** A document. */
    DOCUMENT("document", "documents", BookPackage.Literals.DOCUMENT),
    /** A job record. */
    JOB("job", "jobs", BookPackage.Literals.JOB_RECORD),
    /** The glossary. */
    GLOSSARY("glossary", "", BookPackage.Literals.GLOSSARY),
    /** The shop. */
    SHOP("shop", "", BookPackage.Literals.SHOP);

    /** Ending of the library's files. */
    public static final String ENDING = ".xmi";

    private static final Pattern DATED_ID = Pattern.compile("(?:note|job)-([12][0-9]{3})-.+");

    private final String word;
    private final String folder;
    private final EClass type;

    Kind(String word, String folder, EClass type) {
        this.word = word;
        this.folder = folder;
        this.type = type;
    }

    /**
     * Returns the word for this kind as it is typed on the command line.
     *
     * @return a lower-case English noun
     */
    public String word() {
        return word;
    }

    /**
     * Returns the folder of this kind below the library.
     *
     * @return a folder name, empty for the kinds of which a library has one file
     */
    public String folder() {
        return folder;
    }

    /**
     * Returns the model class of this kind.
     *
     * @return a concrete class of top-level elements
     */
    public EClass type() {
        return type;
    }

    /**
     * Tells whether a library has only one file of this kind, named after the kind.
     *
     * @return true for the shop and the glossary
     */
    public boolean isSingle() {
        return folder.isEmpty();
    }

    /**
     * Tells whether files of this kind lie in a folder for each year.
     *
     * @return true for notes and jobs
     */
    public boolean isDated() {
        return this == NOTE || this == JOB;
    }

    /**
     * Returns the path of an element's file.
     *
     * @param id a well-formed id
     * @return path below the library with forward slashes
     * @throws IllegalArgumentException if the id cannot be one of this kind
     */
    public String path(String id) {
        ElementId.check(id);
        if (isSingle()) {
            if (!id.equals(word)) {
                throw new IllegalArgumentException("The id of the " + word + " must be '" + word + "', not '" + id + "'");
            }
            return word + ENDING;
        }
        return isDated() ? folder + "/" + year(id) + "/" + id + ENDING : folder + "/" + id + ENDING;
    }

    private String year(String id) {
        Matcher matcher = DATED_ID.matcher(id);
        if (!matcher.matches() || !id.startsWith(word)) {
            throw new IllegalArgumentException("The id of a " + word + " must begin with '" + word
                    + "-' and its year, such as " + word + "-2026-..., not '" + id + "'");
        }
        return matcher.group(1);
    }

    /**
     * Returns the kind of a model class.
     *
     * @param type a model class
     * @return its kind, or empty for inner elements
     */
    public static Optional<Kind> of(EClass type) {
        return Arrays.stream(values()).filter(kind -> kind.type == type).findFirst();
    }

    /**
     * Returns the kind of a word, singular or plural.
     *
     * @param word a word such as {@code note} or {@code notes}
     * @return the kind, or empty
     */
    public static Optional<Kind> of(String word) {
        return Arrays.stream(values())
                .filter(kind -> kind.word.equalsIgnoreCase(word) || kind.folder.equalsIgnoreCase(word)).findFirst();
    }
}
