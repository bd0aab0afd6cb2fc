// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.model.Document;
import org.benchlore.model.Kind;

/** The page of a document: what it says in the shop's own words, for which machines, and where it is kept. */
final class DocumentPage implements KindPage {

    private final Document document;
    private final Scope scope;
    private final Links links;

    DocumentPage(Document document, Scope scope) {
        this.document = document;
        this.scope = scope;
        this.links = scope.links();
    }

    @Override
    public void write(Sheet sheet) {
        sheet.facts(KindPage.facts(Kind.DOCUMENT, scope).add("What it is", Labels.of(document.getKind()))
                .add("Issued by", document.getIssuer()).add(Texts.NUMBER, document.getNumber())
                .add("Edition", document.getEdition()).add(Texts.DATE, document.getDate())
                .always("Kept at", document.getKeptAt())
                .add("Components", links.joined(document.getComponents())));
        sheet.section("What it says, in our words", links.text(document.getGist(), document));
        new Ranges(links).write(sheet, document.getApplicability());
        sheet.bullets(2, Texts.CODES, links.each(document.getCodes()));
        sheet.bullets(2, Texts.SYMPTOMS, document.getSymptoms().stream().map(Spans::of).toList());
        new Referrers(scope).write(sheet);
    }
}
