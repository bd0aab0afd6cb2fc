// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.log;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.look.Icons;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.commands.ActionHandler;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;

/** Shows the log, newest first, and copies it for whoever is asked for help. */
public final class LogView extends ViewPart {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss").withZone(ZoneId.systemDefault());
    private static final int PAUSE = 200;

    private final AtomicBoolean pending = new AtomicBoolean();
    private LogBuffer buffer;
    private Table table;
    private Icons icons;
    private WindowThread thread;
    private List<LogRecord> shown = List.of();
    private Runnable unlisten = () -> { };

    @Override
    public void createPartControl(Composite parent) {
        buffer = getSite().getService(LogBuffer.class);
        createTable(parent);
        createActions();
        thread = new WindowThread(table);
        unlisten = buffer.onChange(this::soon);
        show();
    }

    private void createTable(Composite parent) {
        var frame = new Composite(parent, SWT.NONE);
        var layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new Table(frame, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL);
        table.setHeaderVisible(true);
        table.setData(Ids.WIDGET_ID, "log.table");
        Keys.name(table, Messages.tableName);
        icons = new Icons(table);
        column(layout, Messages.columnTime, 10, 90);
        column(layout, Messages.columnText, 60, 200);
        column(layout, Messages.columnSource, 30, 120);
        table.addListener(SWT.SetData, this::fill);
    }

    private void column(TableColumnLayout layout, String title, int weight, int least) {
        var column = new TableColumn(table, SWT.NONE);
        column.setText(title);
        layout.setColumnData(column, new ColumnWeightData(weight, least, true));
    }

    private void createActions() {
        var bars = getViewSite().getActionBars();
        var copy = action(Messages.copy, "copy", this::copy);
        bars.getToolBarManager().add(copy);
        bars.getToolBarManager().add(action(Messages.clear, "clear", buffer::clear));
        getSite().getService(IHandlerService.class).activateHandler(IWorkbenchCommandConstants.EDIT_COPY,
                new ActionHandler(copy));
    }

    private static Action action(String text, String icon, Runnable what) {
        ImageDescriptor image = Icons.descriptor(icon);
        return new Action(text, image) {
            @Override
            public void run() {
                what.run();
            }
        };
    }

    /** Many records in a short time are shown at once. */
    private void soon() {
        if (pending.compareAndSet(false, true)) {
            thread.run(() -> table.getDisplay().timerExec(PAUSE, this::show));
        }
    }

    private void show() {
        pending.set(false);
        if (!table.isDisposed()) {
            shown = buffer.records();
            table.setItemCount(shown.size());
            table.clearAll();
        }
    }

    private LogRecord record(int index) {
        return shown.get(shown.size() - 1 - index);
    }

    private void fill(Event event) {
        var item = (TableItem) event.item;
        if (event.index < shown.size()) {
            var record = record(event.index);
            item.setImage(icons.named(switch (record.level()) {
                case ERROR -> "error";
                case WARNING -> "warning";
                case INFO -> "info";
            }));
            item.setText(new String[] {TIME.format(record.time()), record.text(), record.source()});
        }
    }

    /** Copies the selected records, or all of them if none is selected. */
    private void copy() {
        var selection = table.getSelectionIndices();
        var records = selection.length == 0 ? shown
                : java.util.Arrays.stream(selection).mapToObj(this::record).toList();
        if (!records.isEmpty()) {
            var text = records.stream().map(LogRecord::asText).collect(Collectors.joining("\n"));
            var clipboard = new Clipboard(table.getDisplay());
            clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
            clipboard.dispose();
        }
    }

    @Override
    public void setFocus() {
        table.setFocus();
    }

    @Override
    public void dispose() {
        unlisten.run();
        super.dispose();
    }
}
