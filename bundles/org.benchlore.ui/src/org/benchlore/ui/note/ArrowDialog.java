// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.io.ByteArrayInputStream;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.edit.media.Arrow;
import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.Photo;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/**
 * Draws an arrow on a photo: dragged with the mouse from its end to its tip, or moved with the arrow keys, the tip by
 * themselves and the end with Shift.
 */
final class ArrowDialog extends Dialog {

    private static final double STEP = 0.02;
    private static final double SMALL_STEP = 0.004;

    private final Photo photo;
    private final Consumer<Optional<Arrow>> taker;
    private Optional<Arrow> arrow;
    private Canvas canvas;
    private Image image;

    ArrowDialog(Shell shell, Photo photo, Consumer<Optional<Arrow>> taker) {
        super(shell);
        this.photo = photo;
        this.taker = taker;
        this.arrow = Optional.of(photo.arrow().orElseGet(Arrow::first));
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setBlockOnOpen(false);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.arrowTitle);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        var room = parent.getMonitor().getClientArea();
        image = image(parent, room.width * 6 / 10, room.height * 6 / 10);
        var how = new Label(area, SWT.WRAP);
        how.setText(Messages.arrowHow);
        GridDataFactory.fillDefaults().grab(true, false).hint(Math.max(420, image.getBounds().width), SWT.DEFAULT).applyTo(how);
        canvas = new Canvas(area, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        canvas.setData(Ids.WIDGET_ID, "arrow.canvas");
        Keys.name(canvas, Messages.arrowName);
        GridDataFactory.fillDefaults().grab(true, true).hint(image.getBounds().width, image.getBounds().height).applyTo(canvas);
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS || event.detail == SWT.TRAVERSE_ESCAPE
                || event.detail == SWT.TRAVERSE_RETURN);
        canvas.addListener(SWT.MouseDown, event -> drag(event, true));
        canvas.addListener(SWT.MouseMove, event -> {
            if ((event.stateMask & SWT.BUTTON1) != 0) {
                drag(event, false);
            }
        });
        canvas.setFocus();
        return area;
    }

    private Image image(Composite parent, int width, int height) {
        try {
            var made = new Image(parent.getDisplay(), new ImageData(new ByteArrayInputStream(
                    photo.small(width, height, false))));
            parent.addDisposeListener(event -> made.dispose());
            return made;
        } catch (MediaException e) {
            Failures.log(e.getMessage(), e);
            return new Image(parent.getDisplay(), width, height);
        }
    }

    /** Where the picture stands in the canvas. */
    private Rectangle place() {
        var room = canvas.getClientArea();
        var size = image.getBounds();
        double scale = Math.min(1, Math.min((double) room.width / size.width, (double) room.height / size.height));
        int wide = Math.max(1, (int) (size.width * scale));
        int high = Math.max(1, (int) (size.height * scale));
        return new Rectangle((room.width - wide) / 2, (room.height - high) / 2, wide, high);
    }

    private void paint(GC gc) {
        var place = place();
        var size = image.getBounds();
        gc.drawImage(image, 0, 0, size.width, size.height, place.x, place.y, place.width, place.height);
        arrow.ifPresent(one -> {
            var points = one.outline(place.width, place.height);
            for (int i = 0; i < points.length; i += 2) {
                points[i] += place.x;
                points[i + 1] += place.y;
            }
            gc.setAntialias(SWT.ON);
            gc.setForeground(gc.getDevice().getSystemColor(SWT.COLOR_WHITE));
            gc.setLineWidth(3);
            gc.drawPolygon(points);
            gc.setBackground(new org.eclipse.swt.graphics.Color(Photo.ARROW_COLOUR >> 16, Photo.ARROW_COLOUR >> 8 & 0xff,
                    Photo.ARROW_COLOUR & 0xff));
            gc.fillPolygon(points);
        });
    }

    private void key(Event event) {
        double step = (event.stateMask & SWT.MOD1) != 0 ? SMALL_STEP : STEP;
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> move(event, -step, 0);
            case SWT.ARROW_RIGHT -> move(event, step, 0);
            case SWT.ARROW_UP -> move(event, 0, -step);
            case SWT.ARROW_DOWN -> move(event, 0, step);
            case SWT.DEL -> change(Optional.empty());
            default -> {
            }
        }
    }

    private void move(Event event, double right, double down) {
        var now = arrow.orElseGet(Arrow::first);
        change(Optional.of((event.stateMask & SWT.MOD2) != 0 ? now.endMoved(right, down) : now.tipMoved(right, down)));
    }

    private void drag(Event event, boolean isStart) {
        var place = place();
        double x = (double) (event.x - place.x) / place.width;
        double y = (double) (event.y - place.y) / place.height;
        var now = arrow.orElseGet(Arrow::first);
        change(Optional.of(isStart ? new Arrow(x, y, x, y) : new Arrow(now.fromX(), now.fromY(), x, y)));
    }

    private void change(Optional<Arrow> next) {
        arrow = next;
        canvas.redraw();
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.arrowOk, true).setData(Ids.WIDGET_ID, "arrow.ok");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    @Override
    protected void okPressed() {
        close();
        taker.accept(arrow);
    }

    @Override
    protected boolean isResizable() {
        return true;
    }
}
