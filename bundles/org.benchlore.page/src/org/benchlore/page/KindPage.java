// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.model.Kind;

/** Writes what is particular to one kind of element, below the title and the warnings. */
sealed interface KindPage permits ProcedurePage, NotePage, MachinePage, UnitPage, CodePage, PartPage, ToolPage,
        SupplyPage, DocumentPage, JobPage, GlossaryPage, ShopPage {

    void write(Sheet sheet);

    /** Begins the facts of a page with what it is and the id by which it is called. */
    static Facts facts(Kind kind, Scope scope) {
        return new Facts().add(Labels.capital(Labels.of(kind)), scope.own().getId());
    }
}
