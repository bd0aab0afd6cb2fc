// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.model.Glossary;
import org.benchlore.model.Kind;

/** The page of the glossary: words that mean the same, the shop's own first. */
final class GlossaryPage implements KindPage {

    private final Glossary glossary;
    private final Scope scope;

    GlossaryPage(Glossary glossary, Scope scope) {
        this.glossary = glossary;
        this.scope = scope;
    }

    @Override
    public void write(Sheet sheet) {
        sheet.facts(KindPage.facts(Kind.GLOSSARY, scope));
        var rows = new Rows("Words that mean the same", "Our word", "Also", Texts.REMARK);
        glossary.getEntries().stream().filter(entry -> !entry.getWords().isEmpty()).forEach(entry -> rows.row(
                Spans.of(entry.getWords().get(0)),
                Spans.words(entry.getWords().subList(1, entry.getWords().size())), Spans.of(entry.getText())));
        sheet.table(rows);
    }
}
