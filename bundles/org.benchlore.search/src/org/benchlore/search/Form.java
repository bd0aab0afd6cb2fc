// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.List;

/**
 * One form in which what was typed may stand in a text.
 *
 * @param way how it comes from what was typed
 * @param words as people read it
 * @param stems its words in the index, in order; little words are left out
 */
record Form(Way way, String words, List<String> stems) {

    /** How a form comes from what was typed. */
    enum Way {
        /** It was typed so. */
        TYPED,
        /** It means the same. */
        MEANS,
        /** It is spelt nearly so. */
        NEAR,
        /** It begins so. */
        BEGINS
    }

    Form {
        stems = List.copyOf(stems);
    }

    float weight() {
        return switch (way) {
            case TYPED -> 1;
            case MEANS -> Mix.MEANS;
            case NEAR -> Mix.NEAR;
            case BEGINS -> Mix.BEGINS;
        };
    }
}
