// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.model.Document;
import org.benchlore.model.FaultCode;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Glossary;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.Part;
import org.benchlore.model.Procedure;
import org.benchlore.model.Shop;
import org.benchlore.model.Supply;
import org.benchlore.model.Tool;
import org.benchlore.model.TopElement;
import org.benchlore.model.Unit;
import org.benchlore.page.Block.Tone;
import org.benchlore.store.Library;

/**
 * Makes the pages of a library's elements. Works for elements of the library and for copies that are being edited;
 * never fails for what is missing or wrong in an element. Safe for several threads.
 */
public final class Pages {

    private final Library library;

    /**
     * Makes pages from a library.
     *
     * @param library looked into for titles, prices and everything that refers to an element
     */
    public Pages(Library library) {
        this.library = library;
    }

    /**
     * Makes the page of an element.
     *
     * @param element any top-level element
     * @return its page, from the facts as they are now
     */
    public Page of(TopElement element) {
        var scope = Scope.of(library, element);
        var sheet = new Sheet();
        var title = Names.of(element);
        sheet.heading(1, title);
        new Warnings(scope).write(sheet);
        Kind.of(element.eClass()).ifPresent(kind -> body(kind, element, scope).write(sheet));
        if (sheet.isDangerous()) {
            sheet.banner(Tone.CAUTION, Texts.CHECK_FIRST);
        }
        return new Page(title, sheet.blocks());
    }

    private static KindPage body(Kind kind, TopElement element, Scope scope) {
        return switch (kind) {
            case PROCEDURE -> new ProcedurePage((Procedure) element, scope);
            case NOTE -> new NotePage((FieldNote) element, scope);
            case MACHINE -> new MachinePage((Machine) element, scope);
            case UNIT -> new UnitPage((Unit) element, scope);
            case CODE -> new CodePage((FaultCode) element, scope);
            case PART -> new PartPage((Part) element, scope);
            case TOOL -> new ToolPage((Tool) element, scope);
            case SUPPLY -> new SupplyPage((Supply) element, scope);
            case DOCUMENT -> new DocumentPage((Document) element, scope);
            case JOB -> new JobPage((JobRecord) element, scope);
            case GLOSSARY -> new GlossaryPage((Glossary) element, scope);
            case SHOP -> new ShopPage((Shop) element, scope);
        };
    }
}
