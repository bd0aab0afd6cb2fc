// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import org.benchlore.model.Kind;
import org.benchlore.search.Facet;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.ui.look.Words;

/** Words for what hits are narrowed by. */
final class FacetWords {

    private FacetWords() {
    }

    /** Returns the name with its key marked by {@code &}. */
    static String name(Facet facet) {
        return switch (facet) {
            case KIND -> Messages.facetKind;
            case MACHINE -> Messages.facetMachine;
            case SYSTEM -> Messages.facetSystem;
            case STATUS -> Messages.facetStatus;
            case YEAR -> Messages.facetYear;
        };
    }

    /** Returns the words for no choice. */
    static String every(Facet facet) {
        return switch (facet) {
            case KIND -> Messages.everyKind;
            case MACHINE -> Messages.everyMachine;
            case SYSTEM -> Messages.everySystem;
            case STATUS -> Messages.everyStatus;
            case YEAR -> Messages.everyYear;
        };
    }

    /** Returns a value as people read it. */
    static String value(Facet facet, String value, Catalogue catalogue) {
        return switch (facet) {
            case KIND -> Kind.of(value).map(Words::one).orElse(value);
            case MACHINE -> catalogue.byId(value).map(Row::title).orElse(value);
            case STATUS -> Words.state(value).isEmpty() ? Messages.noStatus : Words.state(value);
            case SYSTEM, YEAR -> value;
        };
    }
}
