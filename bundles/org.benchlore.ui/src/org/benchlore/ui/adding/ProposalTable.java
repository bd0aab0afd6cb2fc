// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.page.AddingWords;
import org.benchlore.plan.adding.Proposal;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** A row for each proposal: the customer's money, the shop's, how often it was seen. What is ticked goes into the plan. */
final class ProposalTable {

    private static final int[] WIDTHS = {230, 105, 130, 190, 110, 105, 130};
    private static final int LEAST_HEIGHT = 60;

    private final Table table;
    private List<Proposal> rows = List.of();

    ProposalTable(Composite parent, Runnable selected, Runnable ticked) {
        table = new Table(parent, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.CHECK);
        table.setData(Ids.WIDGET_ID, "adding.proposals");
        table.setHeaderVisible(true);
        Keys.name(table, Messages.proposals);
        var titles = List.of(Messages.work, Messages.extra, Messages.apart, Messages.seen, Messages.paysFrom,
                Messages.shopExtra, Messages.shopApart);
        for (int i = 0; i < titles.size(); i++) {
            var column = new TableColumn(table, SWT.LEFT);
            column.setText(titles.get(i));
            column.setToolTipText(titles.get(i));
            column.setWidth(WIDTHS[i]);
        }
        GridDataFactory.fillDefaults().grab(true, true).hint(100, LEAST_HEIGHT).applyTo(table);
        table.addListener(SWT.Selection, event -> (event.detail == SWT.CHECK ? ticked : selected).run());
    }

    Table control() {
        return table;
    }

    /** Shows proposals; the one that was selected stays so, else the first is. */
    void show(List<Proposal> next) {
        var before = selected();
        var ticked = ticked();
        rows = next;
        table.setRedraw(false);
        table.setItemCount(next.size());
        for (int i = 0; i < next.size(); i++) {
            fill(table.getItem(i), next.get(i));
            table.getItem(i).setChecked(ticked.contains(next.get(i).id()));
        }
        table.setSelection(before.map(one -> next.stream().map(Proposal::id).toList().indexOf(one)).filter(at -> at >= 0).orElse(0));
        table.setRedraw(true);
    }

    private static void fill(TableItem item, Proposal one) {
        var customer = one.assumptions().customer();
        var shop = one.assumptions().shop();
        item.setText(new String[] {one.title(), Ticked.money(customer.extra()), Ticked.money(customer.apartLater()),
            one.known().words(), AddingWords.paysFrom(one), shop.map(sum -> Ticked.money(sum.extra())).orElse(""),
            shop.map(sum -> Ticked.money(sum.apartLater())).orElse("")});
    }

    Optional<String> selected() {
        int at = table.getSelectionIndex();
        return at < 0 || at >= rows.size() ? Optional.empty() : Optional.of(rows.get(at).id());
    }

    Set<String> ticked() {
        var ticked = new LinkedHashSet<String>();
        for (int i = 0; i < Math.min(rows.size(), table.getItemCount()); i++) {
            if (table.getItem(i).getChecked()) {
                ticked.add(rows.get(i).id());
            }
        }
        return ticked;
    }

    void untick() {
        for (var item : table.getItems()) {
            item.setChecked(false);
        }
    }
}
