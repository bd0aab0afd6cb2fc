// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.access;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.edit.access.Hours;
import org.benchlore.edit.access.SplitHours;
import org.benchlore.measure.Dimension;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Access;
import org.benchlore.model.Procedure;
import org.benchlore.model.Way;
import org.benchlore.model.Work;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Six times: strip, work and refit, usual and when it goes badly. Times that an access has already stand fast. */
final class HoursFields {

    private static final List<String> ROWS = List.of(Messages.strip, Messages.work, Messages.refit);
    private static final List<String> KEYS = List.of("strip", "work", "refit");
    private static final int WORK = 1;
    private static final int WIDTH = 130;

    private final List<Text> usual = new ArrayList<>();
    private final List<Text> bad = new ArrayList<>();
    private final Runnable changed;
    private boolean isShowing;

    HoursFields(Composite area, Runnable changed) {
        this.changed = changed;
        var grid = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 4).extendedMargins(0, 0, 6, 6).applyTo(grid);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
        for (var head : List.of("", Messages.usual, Messages.bad)) {
            new Label(grid, SWT.NONE).setText(head);
        }
        for (int i = 0; i < ROWS.size(); i++) {
            new Label(grid, SWT.NONE).setText(ROWS.get(i));
            usual.add(field(grid, KEYS.get(i) + ".usual", ROWS.get(i), Messages.usual));
            bad.add(field(grid, KEYS.get(i) + ".bad", ROWS.get(i), Messages.bad));
        }
        // The usual times are what most people know: they come first.
        grid.setTabList(Stream.concat(usual.stream(), bad.stream()).toArray(Control[]::new));
    }

    private Text field(Composite grid, String key, String row, String column) {
        var text = new Text(grid, SWT.BORDER);
        text.setData(Ids.WIDGET_ID, "split." + key);
        text.setToolTipText(Messages.timeExample);
        Keys.name(text, row.replace("&", "") + ", " + column);
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(text);
        text.addModifyListener(event -> {
            if (!isShowing) {
                changed.run();
            }
        });
        return text;
    }

    /** Begins with what is recorded for the work itself. */
    void begin(Procedure procedure) {
        isShowing = true;
        var work = procedure.getWays().stream().findFirst().map(Way::getWork);
        for (boolean isBad : new boolean[] {false, true}) {
            (isBad ? bad : usual).get(WORK).setText(work.map(one -> time(one, isBad)).map(Quantity::toString).orElse(""));
        }
        isShowing = false;
    }

    /** Shows what the access has already and what is left for the work. */
    void show(Optional<Access> access, Procedure procedure) {
        isShowing = true;
        for (boolean isBad : new boolean[] {false, true}) {
            var column = isBad ? bad : usual;
            show(column.get(0), access.map(Access::getStrip).map(work -> time(work, isBad)));
            show(column.get(2), access.map(Access::getRefit).map(work -> time(work, isBad)));
        }
        isShowing = false;
        if (problem().isEmpty()) {
            left(usual.get(WORK), complete(access, procedure));
            left(bad.get(WORK), SplitHours.complete(access, bad(),
                    Optional.ofNullable(procedure.getWholeJobBad()), true));
        }
    }

    private static Quantity time(Work work, boolean isBad) {
        return isBad ? work.getMinutesBad() : work.getMinutesUsual();
    }

    private static void show(Text text, Optional<Quantity> fixed) {
        if (fixed.isPresent()) {
            if (!text.getText().equals(fixed.get().toString())) {
                text.setText(fixed.get().toString());
            }
        } else if (!text.getEnabled()) {
            text.setText("");
        }
        text.setEnabled(fixed.isEmpty());
    }

    private static void left(Text text, Hours hours) {
        text.setMessage(hours.work().map(time -> NLS.bind(Messages.left, time)).orElse(""));
    }

    /** Why one of the times cannot be read, if so. */
    Optional<String> problem() {
        try {
            Stream.concat(usual.stream(), bad.stream()).forEach(HoursFields::time);
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    private static Optional<Quantity> time(Text text) {
        return text.getText().isBlank() ? Optional.empty()
                : Optional.of(Quantity.parse(text.getText(), Dimension.TIME));
    }

    Hours usual() {
        return hours(usual);
    }

    Hours bad() {
        return hours(bad);
    }

    private static Hours hours(List<Text> column) {
        return new Hours(time(column.get(0)), time(column.get(WORK)), time(column.get(2)));
    }

    /** The usual hours as they will hold; nothing while one of the times cannot be read. */
    Hours complete(Optional<Access> access, Procedure procedure) {
        return problem().isPresent() ? Hours.NONE : SplitHours.complete(access, usual(),
                Optional.ofNullable(procedure.getWholeJobUsual()), false);
    }
}
