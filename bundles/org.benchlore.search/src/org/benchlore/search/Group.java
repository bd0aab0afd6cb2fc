// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.List;
import java.util.stream.Stream;

/** What was typed, cut into the things of which each may stand in several forms. */
sealed interface Group {

    /** Returns what was typed for it. */
    String typed();

    /**
     * One word, or a run of words that has other names.
     *
     * @param typed the words as typed, in lower case
     * @param forms its forms, the typed one first
     * @param beginning what other words may begin with, empty if the last word is finished or the forms are all of them
     * @param isKnown whether any form stands in the library at all
     * @param leading the form that counts as typed: the likeliest one where the typed one is in no element
     */
    record Words(String typed, List<Form> forms, String beginning, boolean isKnown, Form leading) implements Group {

        public Words {
            forms = List.copyOf(forms);
        }

        Stream<Form> other() {
            return forms.stream().filter(form -> form.way() != Form.Way.TYPED);
        }

        Form own() {
            return forms.get(0);
        }
    }

    /**
     * A fault code.
     *
     * @param typed as typed, or its form without separators
     * @param codes forms without separators in which it may be on an element
     * @param paths files of the library's elements for it
     * @param isBeginning whether it may be the beginning of a longer one
     * @param stems its words in the index, as it may stand in a text
     */
    record Code(String typed, List<String> codes, List<String> paths, boolean isBeginning, List<String> stems)
            implements Group {
    }

    /**
     * A piece of a part number or another number.
     *
     * @param typed as typed
     * @param piece the form without separators
     * @param stems its words in the index, as it may stand in a text
     */
    record Number(String typed, String piece, List<String> stems) implements Group {
    }
}
