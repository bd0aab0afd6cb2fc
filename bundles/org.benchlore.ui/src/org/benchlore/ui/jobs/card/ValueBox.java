// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.benchlore.edit.FieldText;
import org.benchlore.edit.job.Judged;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Round;
import org.benchlore.model.Verdict;
import org.benchlore.page.LinePage;
import org.benchlore.plan.card.CardLine;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A measured value with its verdict at once. */
final class ValueBox implements LineBox {

    private final Tools tools;
    private final Round round;
    private final CardLine.Value line;
    private final Box box;
    private final State state;

    ValueBox(Composite grid, Tools tools, Round round, CardLine.Value line, Supplier<Optional<Address>> who, Runnable relayout) {
        this.tools = tools;
        this.round = round;
        this.line = line;
        var what = line.asked().getWhat() == null ? line.at().id() : line.asked().getWhat();
        var label = new Label(grid, SWT.WRAP);
        label.setText((what + ": " + LinePage.limits(line.asked())).replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(label);
        box = new Box(grid, "job.value." + line.at().id(), what);
        GridDataFactory.fillDefaults().hint(110, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).span(2, 1).applyTo(box.control());
        state = new State(grid, "job.verdict." + line.at().id(), 3, relayout);
        box.on(typed -> take(typed, who.get()), this::judged, state);
    }

    private String typed(String text) {
        return Units.with(text, Units.of(line.asked()));
    }

    private void take(String text, Optional<Address> who) {
        try {
            tools.session().execute(tools.lines().measured(round, line.at(), line.asked(), typed(text), who));
            tools.unread().remove(line.asked(), Literals.MEASURED_VALUE__VALUE);
        } catch (IllegalArgumentException e) {
            tools.unread().put(line.asked(), Literals.MEASURED_VALUE__VALUE, text, e.getMessage());
            throw e;
        }
    }

    private String judged(String text) {
        state.sign("warning");
        var value = FieldText.read(Literals.MEASURED_VALUE__VALUE, typed(text)).map(Quantity.class::cast);
        if (value.isEmpty()) {
            return "";
        }
        var judged = Judged.of(line.asked(), value.get());
        state.sign(judged.verdict() == Verdict.PASS ? "info" : judged.verdict() == Verdict.FAIL ? "error" : "warning");
        var words = judged.words().substring(0, 1).toUpperCase(java.util.Locale.ROOT) + judged.words().substring(1);
        return judged.verdict() == Verdict.FAIL ? Messages.notWithin + " " + words : words;
    }

    @Override
    public void refresh() {
        box.show(tools.recorded().measured(round, line.at()).map(value -> String.valueOf(value.getValue())).orElse(""),
                tools.unread().find(line.asked(), Literals.MEASURED_VALUE__VALUE).isEmpty());
    }

    @Override
    public void commit() {
        box.commit();
    }

    @Override
    public List<Control> controls() {
        return List.of(box.control());
    }
}
