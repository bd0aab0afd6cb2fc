// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import java.util.Locale;
import java.util.Optional;

import org.benchlore.check.Problem;
import org.benchlore.model.Address;

/**
 * One line of the list.
 *
 * @param sort how grave it is
 * @param at the element it is at
 * @param element what people call that, with the place in it
 * @param sentence what is wrong and what to do; where it is silenced, the reason as well
 * @param problem what a rule found; empty for a file that cannot be read as it is
 */
record ProblemRow(Sort sort, Address at, String element, String sentence, Optional<Problem> problem) {

    /** How grave it is: by word and icon, since colours are not seen by everybody. */
    enum Sort {
        ERROR("error"), WARNING("warning"), SILENCED("info");

        private final String icon;

        Sort(String icon) {
            this.icon = icon;
        }

        String icon() {
            return icon;
        }

        String word() {
            return switch (this) {
                case ERROR -> Messages.error;
                case WARNING -> Messages.warning;
                case SILENCED -> Messages.silencedWord;
            };
        }
    }

    String rule() {
        return problem.map(Problem::rule).orElse(Messages.fileRule);
    }

    boolean canBeMended() {
        return sort != Sort.SILENCED && problem.flatMap(Problem::fix).isPresent();
    }

    boolean canBeSilenced() {
        return sort != Sort.SILENCED && problem.isPresent();
    }

    /** Tells whether every word of a filter is in it. */
    boolean matches(String filter) {
        var text = String.join(" ", sort.word(), element, sentence, rule()).toLowerCase(Locale.ROOT);
        for (var word : filter.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
            if (!text.contains(word)) {
                return false;
            }
        }
        return true;
    }

    /** Tells whether it stands for the same as another row, before and after a check. */
    boolean isSameAs(ProblemRow other) {
        return at.equals(other.at) && rule().equals(other.rule()) && element.equals(other.element);
    }
}
