// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.terms.CodeReader;
import org.benchlore.terms.CodeReading;

/** Reads fault codes as people write them and says which of them a library knows. */
public final class CodeLookup {

    private final Catalogue catalogue;
    private final CodeForms forms;

    /**
     * Makes a look-up.
     *
     * @param catalogue the library's facts
     */
    public CodeLookup(Catalogue catalogue) {
        this(catalogue, new CodeForms());
    }

    CodeLookup(Catalogue catalogue, CodeForms forms) {
        this.catalogue = catalogue;
        this.forms = forms;
    }

    /**
     * One way to read a text as a code.
     *
     * @param reading the code and what is said of it
     * @param known the library's elements for this code, mostly one or none
     */
    public record Reading(CodeReading reading, List<Row> known) {
    }

    /**
     * Reads a text in every way in which it can be a code.
     *
     * @param text anything
     * @return the readings, those that the library knows first; empty if it is no code
     */
    public List<Reading> read(String text) {
        return CodeReader.read(text).stream()
                .map(reading -> new Reading(reading, known(reading.key().indexForm()).toList()))
                .sorted(Comparator.comparing(reading -> reading.known().isEmpty())).toList();
    }

    /** Returns the library's elements for a code in the form without separators. */
    Stream<Row> known(String indexForm) {
        return catalogue.rows(Kind.CODE)
                .filter(row -> row.codes().stream().anyMatch(code -> forms.of(code).equals(indexForm)));
    }
}
