// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.Locale;

import org.benchlore.check.rules.Rules;

/** The rules as a page of the documentation, in Markdown. The same rules give the same text. */
public final class RulesDocument {

    private RulesDocument() {
    }

    /** Writes all rules by chapters. */
    public static String of(Rules rules) {
        var text = new StringBuilder("# The rules\n\nWritten by `benchlore check --rules`, from the rules themselves. ")
                .append(rules.all().size()).append(" rules. A rule is silenced at one element, with a reason, in the shop.\n")
                .append("Scope: *element*, the file alone; *neighbours*, what it refers to as well; *library*, the facts "
                        + "of all files.\n");
        for (var chapter : rules.chapters()) {
            text.append("\n## ").append(chapter.title())
                    .append("\n\n| rule | | scope | what must be so | otherwise | what it cannot see |\n")
                    .append("|---|---|---|---|---|---|\n");
            chapter.rules().forEach(rule -> row(rule, text));
        }
        return text.toString();
    }

    private static void row(Rule rule, StringBuilder text) {
        text.append("| `").append(rule.id()).append("` | ").append(word(rule.severity())).append(" | ").append(word(rule.scope()))
                .append(" | ").append(rule.title()).append(" | ").append(rule.why()).append(" | ").append(rule.about().reach())
                .append(" |\n");
    }

    private static String word(Enum<?> literal) {
        return literal.name().toLowerCase(Locale.ROOT);
    }
}
