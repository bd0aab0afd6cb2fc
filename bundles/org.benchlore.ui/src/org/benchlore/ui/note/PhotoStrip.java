// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import org.benchlore.edit.desk.MinuteNote;
import org.benchlore.model.Media;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Icons;
import org.benchlore.ui.note.PhotoWork.Taken;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** The photos of a note: chosen, pasted or dropped; turned, pointed at, captioned, removed. */
final class PhotoStrip {

    private static final int ROWS_HEIGHT = 150;

    private record Shown(Media media, Taken taken) {
    }

    private final MinuteNote minute;
    private final PhotoWork work;
    private final Composite area;
    private final Button turn;
    private final Button arrow;
    private final Button remove;
    private final Composite list;
    private final Table table;
    private final Text caption;
    private final Runnable grown;

    PhotoStrip(Composite parent, MinuteNote minute, PhotoWork work, Runnable grown, Runnable paste) {
        this.minute = minute;
        this.work = work;
        this.grown = grown;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        var buttons = new Composite(area, SWT.NONE);
        var row = new RowLayout(SWT.HORIZONTAL);
        row.marginLeft = 0;
        row.marginTop = 0;
        row.marginBottom = 0;
        buttons.setLayout(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(buttons);
        button(buttons, Messages.addPhoto, "note.photo.add", this::choose);
        button(buttons, Messages.pastePhoto, "note.photo.paste", paste);
        turn = button(buttons, Messages.turn, "note.photo.turn", this::turn);
        arrow = button(buttons, Messages.arrow, "note.photo.arrow", this::arrow);
        remove = button(buttons, Messages.remove, "note.photo.remove", this::remove);
        list = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 4).applyTo(list);
        table = createTable();
        new Label(list, SWT.NONE).setText(Messages.caption);
        caption = createCaption();
        GridDataFactory.fillDefaults().exclude(true).applyTo(list);
        list.setVisible(false);
        minute.note().getMedia().forEach(media -> work.read(media, taken -> show(media, taken)));
        selected(Optional.empty());
    }

    Composite control() {
        return area;
    }

    private static Button button(Composite row, String words, String id, Runnable action) {
        var button = new Button(row, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private Table createTable() {
        var photos = new Table(list, SWT.SINGLE | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        photos.setData(Ids.WIDGET_ID, "note.photos");
        Keys.name(photos, Messages.photosName);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(SWT.DEFAULT, ROWS_HEIGHT).applyTo(photos);
        photos.addListener(SWT.Selection, event -> selected(current()));
        photos.addListener(SWT.DefaultSelection, event -> arrow());
        Keys.on(photos, SWT.DEL, this::remove);
        Keys.on(photos, 'r', this::turn);
        Keys.on(photos, 'a', this::arrow);
        return photos;
    }

    private Text createCaption() {
        var text = new Text(list, SWT.BORDER);
        text.setData(Ids.WIDGET_ID, "note.photo.caption");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        text.addModifyListener(event -> current().ifPresent(shown -> {
            if (!text.getText().equals(words(shown.media()))) {
                minute.caption(shown.media(), text.getText());
                table.getSelection()[0].setText(line(shown));
            }
        }));
        return text;
    }

    private static String words(Media media) {
        return media.getCaption() == null ? "" : media.getCaption();
    }

    private Optional<Shown> current() {
        return Arrays.stream(table.getSelection()).findFirst().map(item -> (Shown) item.getData());
    }

    private void selected(Optional<Shown> shown) {
        var canDraw = shown.filter(one -> one.taken().photo().canBeDrawnOn()).isPresent();
        turn.setEnabled(canDraw);
        arrow.setEnabled(canDraw);
        remove.setEnabled(shown.isPresent());
        caption.setEnabled(shown.isPresent());
        var words = shown.map(one -> words(one.media())).orElse("");
        if (!caption.getText().equals(words)) {
            caption.setText(words);
        }
    }

    private void choose() {
        var dialog = new FileDialog(area.getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText(Messages.chooseTitle);
        if (dialog.open() != null) {
            for (var name : dialog.getFileNames()) {
                take(Path.of(dialog.getFilterPath(), name));
            }
        }
    }

    void take(Path file) {
        work.take(file, this::add);
    }

    void take(byte[] bytes) {
        work.take(bytes, this::add);
    }

    private void add(Taken taken) {
        show(minute.add(taken.stored()), taken);
    }

    private void show(Media media, Taken taken) {
        if (!list.getVisible()) {
            list.setVisible(true);
            GridDataFactory.fillDefaults().grab(true, true).applyTo(list);
            GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
            grown.run();
        }
        var item = new TableItem(table, SWT.NONE);
        fill(item, new Shown(media, taken));
        table.setSelection(item);
        table.showSelection();
        selected(current());
    }

    private void fill(TableItem item, Shown shown) {
        var old = item.getImage();
        item.setData(shown);
        item.setImage(framed(shown.taken().small()));
        item.setText(line(shown));
        if (old != null) {
            old.dispose();
        }
        var image = item.getImage();
        item.addDisposeListener(event -> image.dispose());
    }

    /** All pictures of a list have one size, so each stands in a frame of that size. */
    private Image framed(Optional<ImageData> small) {
        var frame = new Image(area.getDisplay(), PhotoWork.THUMB_WIDTH, PhotoWork.THUMB_HEIGHT);
        var gc = new GC(frame);
        gc.setBackground(table.getBackground());
        gc.fillRectangle(frame.getBounds());
        var image = small.map(data -> new Image(area.getDisplay(), data));
        var drawn = image.orElseGet(() -> new Icons(table).named("page"));
        var size = drawn.getBounds();
        double scale = Math.min(1, Math.min((double) PhotoWork.THUMB_WIDTH / size.width,
                (double) PhotoWork.THUMB_HEIGHT / size.height));
        int wide = Math.max(1, (int) (size.width * scale));
        int high = Math.max(1, (int) (size.height * scale));
        gc.drawImage(drawn, 0, 0, size.width, size.height, (PhotoWork.THUMB_WIDTH - wide) / 2,
                (PhotoWork.THUMB_HEIGHT - high) / 2, wide, high);
        gc.dispose();
        image.ifPresent(Image::dispose);
        return frame;
    }

    private String line(Shown shown) {
        var words = words(shown.media());
        var type = shown.taken().photo().type().name();
        return words.isBlank() ? NLS.bind(Messages.photoLine, type) : words;
    }

    private void turn() {
        current().filter(shown -> shown.taken().photo().canBeDrawnOn()).ifPresent(shown ->
                work.take(shown.taken().photo().turned(), taken -> replace(shown.media(), taken)));
    }

    private void arrow() {
        current().filter(shown -> shown.taken().photo().canBeDrawnOn()).ifPresent(shown ->
                new ArrowDialog(area.getShell(), shown.taken().photo(), next -> work.take(
                        shown.taken().photo().pointed(next), taken -> replace(shown.media(), taken))).open());
    }

    private void replace(Media media, Taken taken) {
        for (var item : table.getItems()) {
            if (((Shown) item.getData()).media() == media) {
                minute.replace(media, taken.stored());
                fill(item, new Shown(media, taken));
            }
        }
        selected(current());
    }

    private void remove() {
        current().ifPresent(shown -> {
            int at = table.getSelectionIndex();
            minute.remove(shown.media());
            table.remove(at);
            table.setSelection(Math.min(at, table.getItemCount() - 1));
            selected(current());
        });
    }
}
