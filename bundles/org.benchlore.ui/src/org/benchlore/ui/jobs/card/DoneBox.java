// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.benchlore.edit.job.Doing;
import org.benchlore.edit.job.Ticked;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.DoneWork;
import org.benchlore.model.Round;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.card.CardLine.Task;
import org.benchlore.ui.Ids;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Time, people, who, and the tick of a line. Time and people of a line that is not ticked go in with the tick. */
final class DoneBox implements LineBox {

    private static final int SHORT = 60;

    private final Tools tools;
    private final Round round;
    private final Task task;
    private final Ticked line;
    private final Box minutes;
    private final Box people;
    private final WhoChoice by;
    private final Button tick;
    private final State state;

    DoneBox(Composite parent, Tools tools, Round round, Task task, Supplier<Optional<Address>> who, Runnable relayout) {
        this.tools = tools;
        this.round = round;
        this.task = task;
        this.line = line(task);
        var row = new Composite(parent, SWT.NONE);
        var layout = new RowLayout();
        layout.center = true;
        layout.marginLeft = 0;
        row.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(row);
        minutes = box(row, "job.minutes", Messages.minutes);
        if (task.minutes().usual() > 0) {
            minutes.control().setMessage(NLS.bind(Messages.plannedMinutes, task.minutes().usual()));
        }
        people = box(row, "job.people", Messages.people);
        people.control().setMessage(String.valueOf(task.people()));
        var cell = cell(row, Messages.by);
        by = new WhoChoice(cell, tools, "job.by", Messages.byName);
        by.choose(who.get());
        tick = new Button(row, SWT.PUSH);
        tick.setData(Ids.WIDGET_ID, "job.tick");
        tick.addListener(SWT.Selection, event -> ticked());
        state = new State(parent, "job.doneState", 1, relayout);
        by.control().addListener(SWT.Selection, event -> change());
    }

    static Ticked line(Task task) {
        return task.part() == Part.STRIP ? new Ticked.Opened(task.place(), task.before())
                : task.part() == Part.REFIT ? new Ticked.Closed(task.place(), task.before())
                        : new Ticked.Done(task.place(), task.before());
    }

    private Composite cell(Composite row, String words) {
        var cell = new Composite(row, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 0).applyTo(cell);
        var label = new Label(cell, SWT.NONE);
        label.setText(words);
        GridDataFactory.swtDefaults().applyTo(label);
        return cell;
    }

    private Box box(Composite row, String id, String words) {
        var box = new Box(cell(row, words), id, words);
        GridDataFactory.fillDefaults().hint(id.equals("job.minutes") ? 2 * SHORT : SHORT, SWT.DEFAULT).applyTo(box.control());
        box.on(typed -> change(), typed -> "", words1 -> state().accept(words1));
        return box;
    }

    private State state() {
        state.sign("error");
        return state;
    }

    private Optional<DoneWork> there() {
        return tools.recorded().done(round, line);
    }

    boolean isTicked() {
        return there().isPresent();
    }

    private Doing doing() {
        return new Doing(minutes.control().getText(), people.control().getText(), by.chosen(), task.renewed(), task.fitted());
    }

    private void change() {
        if (isTicked()) {
            put();
        } else {
            org.benchlore.edit.FieldText.read(Literals.DONE_WORK__MINUTES, doing().minutes());
            org.benchlore.edit.FieldText.read(Literals.DONE_WORK__PEOPLE, doing().people());
        }
    }

    private void put() {
        tools.session().execute(tools.lines().tick(round, line, doing()));
    }

    /** Ticks the line; says why it cannot be done. */
    boolean tick() {
        try {
            put();
            state.accept("");
            return true;
        } catch (IllegalArgumentException e) {
            state().accept(e.getMessage());
            minutes.control().setFocus();
            return false;
        }
    }

    private void ticked() {
        if (isTicked()) {
            tools.did(() -> tools.lines().untick(round, line));
        } else {
            tick();
        }
    }

    @Override
    public void refresh() {
        var now = there();
        tick.setText(now.isPresent() ? Messages.takeBack : Messages.tick);
        now.ifPresent(done -> {
            minutes.show(done.getMinutes() == null ? "" : done.getMinutes().toString(), true);
            people.show(done.getPeople() == null ? "" : done.getPeople().toString(), true);
            by.choose(tools.address(done.getBy()));
        });
        tick.getParent().layout();
    }

    @Override
    public void commit() {
        minutes.commit();
        people.commit();
    }

    @Override
    public List<Control> controls() {
        return List.of(minutes.control(), people.control(), by.control());
    }
}
