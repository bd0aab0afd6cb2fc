// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.Set;

import org.benchlore.model.Kind;
import org.benchlore.model.Tool;
import org.benchlore.model.YesNo;

/** The page of a tool: what it can do, where it hangs, and what it is used for. */
final class ToolPage implements KindPage {

    private final Tool tool;
    private final Scope scope;

    ToolPage(Tool tool, Scope scope) {
        this.tool = tool;
        this.scope = scope;
    }

    @Override
    public void write(Sheet sheet) {
        sheet.facts(KindPage.facts(Kind.TOOL, scope).add(Texts.NUMBER, tool.getNumber())
                .add("Special tool", Labels.of(tool.isSpecial() ? YesNo.YES : YesNo.NO))
                .add("Range", Spans.range(tool.getRangeFrom(), tool.getRangeTo())).add("Reach", tool.getReach())
                .add("Needs calibration", Labels.of(tool.getCalibrated()))
                .add(Texts.PRICE, scope.prices().amount(tool.getPrice())));
        sheet.paragraph(scope.links().text(tool.getText(), tool));
        new Holdings(scope).tools(sheet);
        new Referrers(scope).write(sheet, Set.of(Kind.SHOP));
    }
}
