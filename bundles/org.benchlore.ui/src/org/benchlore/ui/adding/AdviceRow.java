// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.benchlore.evidence.decide.Option;
import org.benchlore.page.AddingWords;
import org.benchlore.plan.adding.Proposal;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** What a person advises about the selected proposal, and why. The program chooses nothing. */
final class AdviceRow {

    private final Combo way;
    private final Text because;
    private final Map<String, Advice> given = new HashMap<>();
    private Optional<String> proposal = Optional.empty();
    private boolean isFilling;

    AdviceRow(Composite parent) {
        var row = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(6, 0).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        new Label(row, SWT.NONE).setText(Messages.weAdvise);
        way = new Combo(row, SWT.READ_ONLY);
        way.setData(Ids.WIDGET_ID, "adding.advice");
        way.add(Messages.noAdvice);
        for (var option : Option.values()) {
            way.add(AddingWords.way(option));
        }
        Keys.name(way, Messages.weAdvise.replace("&", ""));
        GridDataFactory.fillDefaults().hint(150, SWT.DEFAULT).applyTo(way);
        new Label(row, SWT.NONE).setText(Messages.because);
        because = new Text(row, SWT.BORDER);
        because.setData(Ids.WIDGET_ID, "adding.because");
        Keys.name(because, Messages.because.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).hint(80, SWT.DEFAULT).applyTo(because);
        way.addListener(SWT.Selection, event -> keep());
        because.addListener(SWT.Modify, event -> keep());
        show(Optional.empty());
    }

    private void keep() {
        if (!isFilling) {
            int at = way.getSelectionIndex();
            proposal.ifPresent(id -> given.put(id, new Advice(at <= 0 ? Optional.empty() : Optional.of(Option.values()[at - 1]),
                    because.getText())));
        }
    }

    /** Shows what is advised about a proposal. */
    void show(Optional<String> next) {
        if (next.isPresent() && next.equals(proposal)) {
            return;
        }
        proposal = next;
        var advice = next.map(id -> given.getOrDefault(id, Advice.NONE)).orElse(Advice.NONE);
        isFilling = true;
        way.select(advice.way().map(it -> it.ordinal() + 1).orElse(0));
        because.setText(advice.because());
        isFilling = false;
        way.setEnabled(next.isPresent());
        because.setEnabled(next.isPresent());
    }

    /** The lines for the customer, in the order of the proposals. */
    String lines(List<Proposal> proposals) {
        return proposals.stream().map(one -> given.getOrDefault(one.id(), Advice.NONE).line(one.title()))
                .filter(line -> !line.isEmpty()).collect(Collectors.joining(" "));
    }

    void forget() {
        given.clear();
        proposal = Optional.empty();
        show(Optional.empty());
    }
}
