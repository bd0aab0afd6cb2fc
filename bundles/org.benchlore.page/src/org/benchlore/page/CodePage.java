// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Cause;
import org.benchlore.model.FaultCode;
import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.store.LoadedFile;

/** The page of a fault code: what it means, what sets it, and what the book has on it. */
final class CodePage implements KindPage {

    private final FaultCode code;
    private final Scope scope;
    private final Links links;

    CodePage(FaultCode code, Scope scope) {
        this.code = code;
        this.scope = scope;
        this.links = scope.links();
    }

    @Override
    public void write(Sheet sheet) {
        sheet.facts(KindPage.facts(Kind.CODE, scope).add("Code", code.getCode())
                .add("Also written", Spans.words(code.getWritten())).add("Scheme", Labels.of(code.getScheme()))
                .add("Defined by", code.getDefinedBy()).add("Machines", links.joined(code.getMachines()))
                .add("Components", links.joined(code.getComponents())));
        sheet.section("What it means", links.text(code.getMeaning(), code));
        sheet.section("When it is set", links.text(code.getConditions(), code));
        sheet.bullets(2, "Causes that set it", causes());
        new Referrers(scope).write(sheet);
    }

    private List<List<Span>> causes() {
        var items = new ArrayList<List<Span>>();
        scope.path().stream().flatMap(scope.library().catalogue()::referringTo)
                .filter(row -> row.kind() == Kind.MACHINE).map(row -> scope.library().file(row.path()))
                .flatMap(Optional::stream).map(LoadedFile::root).flatMap(Optional::stream)
                .forEach(machine -> causes(machine, items));
        return items;
    }

    private void causes(TopElement machine, List<List<Span>> items) {
        var own = links.address(code);
        machine.eAllContents().forEachRemaining(object -> {
            if (object instanceof Cause cause
                    && cause.getCodes().stream().anyMatch(set -> links.address(set).equals(own))) {
                items.add(Spans.join(", ", List.of(links.to(cause), Spans.of(Labels.of(cause.getFrequency())),
                        Spans.before("on ", links.to(machine)))));
            }
        });
    }
}
