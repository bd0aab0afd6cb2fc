// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.benchlore.edit.FieldText;
import org.benchlore.edit.job.Turning;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Round;
import org.benchlore.model.Tightened;
import org.benchlore.page.LinePage;
import org.benchlore.plan.card.CardLine;
import org.benchlore.torque.StatedTorque;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.edit.form.ComboKeys;
import org.benchlore.workshop.HeldWrench;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A torque with the angle, where one is asked, and the wrench itself; a wrench that may not be used is not taken. */
final class TorqueBox implements LineBox {

    private static final int WRENCH_WIDTH = 150;

    private final Tools tools;
    private final Round round;
    private final CardLine.Torque line;
    private final Supplier<Optional<Address>> who;
    private final List<HeldWrench> wrenches;
    private final Box torque;
    private final Optional<Box> angle;
    private final Combo wrench;
    private final State state;

    TorqueBox(Composite grid, Tools tools, Round round, CardLine.Torque line, Supplier<Optional<Address>> who, Runnable relayout) {
        this.tools = tools;
        this.round = round;
        this.line = line;
        this.who = who;
        this.wrenches = tools.wrenches();
        var place = line.asked().getPlace() == null ? line.at().id() : line.asked().getPlace();
        var label = new Label(grid, SWT.WRAP);
        label.setText((place + ": " + LinePage.stages(line.asked())).replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(label);
        var boxes = new Composite(grid, SWT.NONE);
        boolean turns = Units.angle(line.asked()).isPresent();
        GridLayoutFactory.fillDefaults().numColumns(turns ? 2 : 1).spacing(4, 0).applyTo(boxes);
        torque = new Box(boxes, "job.torque." + line.at().id(), NLS.bind(Messages.torqueName, place));
        angle = turns ? Optional.of(new Box(boxes, "job.angle." + line.at().id(), NLS.bind(Messages.angleName, place)))
                : Optional.empty();
        wrench = wrench(grid, place);
        state = new State(grid, "job.turned." + line.at().id(), 3, relayout);
        torque.on(typed -> take(), typed -> words(), state);
        angle.ifPresent(box -> box.on(typed -> take(), typed -> words(), state));
    }

    private Combo wrench(Composite grid, String place) {
        var combo = new Combo(grid, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setData(Ids.WIDGET_ID, "job.wrench." + line.at().id());
        Keys.name(combo, NLS.bind(Messages.wrenchName, place));
        combo.add(Messages.wrench);
        wrenches.forEach(held -> combo.add(held.wrench().name()));
        combo.select(0);
        ComboKeys.install(combo);
        GridDataFactory.fillDefaults().hint(WRENCH_WIDTH, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(combo);
        combo.addListener(SWT.Selection, event -> wrenchChosen());
        return combo;
    }

    private Optional<HeldWrench> chosen() {
        return wrench.getSelectionIndex() < 1 ? Optional.empty() : Optional.of(wrenches.get(wrench.getSelectionIndex() - 1));
    }

    private String torqueTyped() {
        return Units.with(torque.control().getText(), Units.torque(line.asked()).map(asked -> asked.unit().symbol()));
    }

    private Optional<Quantity> set() {
        return FieldText.read(Literals.TIGHTENED__TORQUE, torqueTyped()).map(Quantity.class::cast)
                .or(() -> Units.torque(line.asked()));
    }

    private Optional<String> problem() {
        return chosen().flatMap(held -> set().flatMap(asked -> held.problem(StatedTorque.of(asked).newtonMetres(),
                LocalDate.now(), wrenches)));
    }

    /** A wrench that may not be used is said with what to do, and not written down. */
    private void wrenchChosen() {
        try {
            if (problem().isEmpty()) {
                take();
            }
            state.accept(words());
        } catch (IllegalArgumentException e) {
            state.accept(e.getMessage());
        }
    }

    private void take() {
        try {
            var by = problem().isEmpty() ? chosen() : Optional.<HeldWrench>empty();
            tools.session().execute(tools.lines().tightened(round, line.at(), new Turning(torqueTyped(),
                    angle.map(box -> Units.with(box.control().getText(), Optional.of("°"))).orElse(""),
                    by.map(HeldWrench::tool), by.flatMap(HeldWrench::holding), who.get())));
            tools.unread().remove(line.asked(), Literals.TIGHTENED__TORQUE);
        } catch (IllegalArgumentException e) {
            tools.unread().put(line.asked(), Literals.TIGHTENED__TORQUE, torque.control().getText(), e.getMessage());
            throw e;
        }
    }

    private String words() {
        state.sign("warning");
        var typed = FieldText.read(Literals.TIGHTENED__TORQUE, torqueTyped()).map(Quantity.class::cast);
        angle.ifPresent(box -> FieldText.read(Literals.TIGHTENED__ANGLE, Units.with(box.control().getText(), Optional.of("°"))));
        var refused = problem();
        if (refused.isPresent()) {
            state.sign("error");
            return refused.get();
        }
        var asked = Units.torque(line.asked());
        if (typed.isPresent() && asked.isPresent() && typed.get().compareMagnitude(asked.get()) != 0) {
            return NLS.bind(Messages.otherTorque, asked.get());
        }
        if (typed.isPresent() && chosen().isEmpty()) {
            return Messages.noWrench;
        }
        state.sign("info");
        return typed.isPresent() ? Messages.asAsked : "";
    }

    @Override
    public void refresh() {
        var there = tools.recorded().tightened(round, line.at());
        boolean isTakenBack = tools.unread().find(line.asked(), Literals.TIGHTENED__TORQUE).isEmpty();
        if (there.isPresent() && problem().isEmpty()) {
            wrench.select(index(there.get()) + 1);
        }
        torque.show(there.map(Tightened::getTorque).map(Quantity::toString).orElse(""), isTakenBack);
        angle.ifPresent(box -> box.show(there.map(Tightened::getAngle).map(Quantity::toString).orElse(""), isTakenBack));
    }

    private int index(Tightened there) {
        var holding = tools.address(there.getHolding());
        return wrenches.stream().map(HeldWrench::holding).toList().indexOf(holding.isEmpty() ? null : holding);
    }

    @Override
    public void commit() {
        torque.commit();
        angle.ifPresent(Box::commit);
    }

    @Override
    public List<Control> controls() {
        var all = new ArrayList<Control>(List.of(torque.control()));
        angle.ifPresent(box -> all.add(box.control()));
        all.add(wrench);
        return all;
    }
}
