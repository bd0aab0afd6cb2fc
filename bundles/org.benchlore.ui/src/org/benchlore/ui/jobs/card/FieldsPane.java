// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.function.Supplier;

import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.LeftInPlace;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.card.CardLine;
import org.benchlore.plan.card.CardLines;
import org.benchlore.plan.card.InReach;
import org.benchlore.ui.Ids;
import org.benchlore.ui.edit.form.DetailArea;
import org.benchlore.ui.edit.form.FormPane;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The forms beside the card, with what the card proposes for them. */
final class FieldsPane {

    private final Tools tools;
    private final DetailArea area;
    private final Planning planning;
    private final Supplier<Optional<Address>> who;
    private Composite confirms;

    FieldsPane(Composite parent, Tools tools, Planning planning, Supplier<Optional<Address>> who) {
        this.tools = tools;
        this.planning = planning;
        this.who = who;
        area = new DetailArea(parent, tools.scope());
    }

    DetailArea area() {
        return area;
    }

    void show(Node node) {
        if (node instanceof Node.OfRound round) {
            area.show(round.round());
        } else if (node instanceof Node.Fields fields) {
            area.show(fields.key(), content -> fill(content, fields.part()));
        }
    }

    private FormPane fill(Composite content, Node.Part part) {
        confirms = null;
        if (part == Node.Part.SAVED) {
            said(content, Messages.savedWhat);
            button(content, "job.proposeSaved", Messages.proposeSaved, this::proposeSaved);
        } else if (part == Node.Part.LEFT) {
            said(content, Messages.leftWhat);
            button(content, "job.proposeLeft", Messages.proposeLeft, () -> tools.did(() ->
                    tools.edits().leave(InReach.of(tools.library(), tools.job(), planning.cards()))));
            confirms = new Composite(content, SWT.NONE);
            var layout = new RowLayout(SWT.VERTICAL);
            layout.marginLeft = 0;
            layout.fill = true;
            confirms.setLayout(layout);
            GridDataFactory.fillDefaults().grab(true, false).applyTo(confirms);
            fillConfirms();
        } else if (part == Node.Part.OFFERS) {
            said(content, Messages.offersWhat);
        } else if (part == Node.Part.ENDED) {
            proofs(content);
        }
        return FormPane.sections(tools.scope(), content, tools.job(), part.sections());
    }

    private static void said(Composite content, String words) {
        var label = new Label(content, SWT.WRAP);
        label.setText(words.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(label);
    }

    private static void button(Composite content, String id, String words, Runnable action) {
        var button = new Button(content, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> action.run());
        GridDataFactory.swtDefaults().applyTo(button);
    }

    /** Values that the lines before the strip ask for, with what was measured for them already. */
    private void proposeSaved() {
        var values = new LinkedHashMap<String, String>();
        var rounds = tools.job().getRounds();
        for (int i = 0; i < rounds.size() && i < planning.cards().size(); i++) {
            var round = rounds.get(i);
            planning.cards().get(i).items().stream().filter(item -> item.part() == Part.BEFORE)
                    .flatMap(item -> item.work().stream()).flatMap(work -> work.getSteps().stream())
                    .flatMap(step -> step.getMeasurements().stream()).filter(asked -> asked.getWhat() != null)
                    .forEach(asked -> values.merge(asked.getWhat(), tools.address(asked)
                            .flatMap(at -> tools.recorded().measured(round, at)).map(value -> String.valueOf(value.getValue()))
                            .orElse(""), (old, later) -> old.isEmpty() ? later : old));
        }
        if (values.isEmpty()) {
            tools.said().accept(Messages.nothingToSave);
        }
        tools.did(() -> tools.edits().save(values));
    }

    private void proofs(Composite content) {
        var rounds = tools.job().getRounds();
        if (!rounds.isEmpty() && planning.cards().size() == rounds.size()) {
            var last = rounds.size() - 1;
            CardLines.of(tools.library(), planning.cards().get(last), rounds.get(last)).stream()
                    .filter(CardLine.Proof.class::isInstance).map(CardLine.Proof.class::cast)
                    .filter(line -> line.proof().getText() != null)
                    .forEach(line -> said(content, "•  " + line.proof().getText().strip()));
        }
    }

    private void fillConfirms() {
        for (var child : confirms.getChildren()) {
            child.dispose();
        }
        tools.job().getLeft().stream().filter(left -> left.getConfirmedBy() == null).forEach(left -> {
            var button = new Button(confirms, SWT.PUSH | SWT.LEFT);
            button.setText(NLS.bind(Messages.confirm, title(left)).replace("&", "&&"));
            button.setData(Ids.WIDGET_ID, "job.confirm." + tools.address(left.getComponent()).map(Address::id).orElse(""));
            button.addListener(SWT.Selection, event -> confirm(left));
        });
    }

    private String title(LeftInPlace left) {
        return tools.library().resolve(left.getComponent()).filter(Component.class::isInstance)
                .map(component -> ((Component) component).getTitle()).orElseGet(() -> String.valueOf(left.getText()));
    }

    private void confirm(LeftInPlace left) {
        if (who.get().isEmpty()) {
            tools.said().accept(Messages.chooseWho);
        } else {
            tools.did(() -> tools.edits().confirm(left, who.get()));
        }
    }

    void refresh() {
        area.pane().ifPresent(FormPane::refresh);
        if (confirms != null && !confirms.isDisposed()) {
            fillConfirms();
            confirms.getParent().layout(true, true);
            area.control().notifyListeners(SWT.Resize, null);
        }
    }

    void focus() {
        area.pane().ifPresent(FormPane::focus);
    }
}
