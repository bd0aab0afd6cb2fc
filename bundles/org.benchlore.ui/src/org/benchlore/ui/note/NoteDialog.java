// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.benchlore.edit.desk.Chips;
import org.benchlore.edit.desk.MinuteNote;
import org.benchlore.edit.desk.NoteStart;
import org.benchlore.edit.desk.Proposal;
import org.benchlore.edit.desk.Standpoint;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.model.FieldNote;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.edit.Editing;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;

/**
 * Takes a note in a minute: only what was learned is required, what one stands at is filled in, what the text speaks of
 * is proposed. Whatever becomes of the dialog, what was written stays as a draft until it is saved or dropped.
 */
public final class NoteDialog extends Dialog {

    private static final int PAUSE = 250;
    private static final int MOST_CHIPS = 12;

    private final IWorkbenchWindow window;
    private final Opened opened;
    private final MinuteNote minute;
    private final Chips chips = new Chips();
    private final List<Proposal> stand;
    private final boolean isGoneOn;
    private List<Proposal> proposed = List.of();
    private NoteForm form;
    private PhotoWork photos;
    private NoteSaver saver;
    private LatestJob<FieldNote, List<Proposal>> proposing;
    private boolean isSaving;

    private NoteDialog(IWorkbenchWindow window, Opened opened, MinuteNote minute, List<Proposal> stand, boolean isGoneOn) {
        super(window.getShell());
        this.window = window;
        this.opened = opened;
        this.minute = minute;
        this.stand = stand;
        this.isGoneOn = isGoneOn;
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setBlockOnOpen(false);
    }

    /**
     * Begins a note where one stands, or goes on with the one that was left. A dialog that is open comes to the front.
     *
     * @param window the window
     * @param begun what was written already, may be empty
     */
    public static void begin(IWorkbenchWindow window, String begun) {
        begin(window, NoteStart.written(begun));
    }

    /**
     * Begins a note with all that is known; where nothing is, where one stands, or with the note that was left.
     *
     * @param window the window
     * @param begun text and fields; the place where one stands fills the fields where there are none
     */
    public static void begin(IWorkbenchWindow window, NoteStart begun) {
        var sessions = window.getService(Editing.class).sessions();
        var opened = window.getService(LibrarySession.class).current();
        if (sessions.isEmpty() || opened.isEmpty()) {
            return;
        }
        try {
            var left = new LeftNotes(window, opened.get()).latest();
            if (left.isPresent() && begun.isEmpty()) {
                show(window, MinuteNote.goOn(sessions.get(), left.get()), true);
                return;
            }
            var about = begun.about().isEmpty() ? standpoint(window, opened.get()) : begun.about();
            var fresh = MinuteNote.begin(sessions.get(), LocalDate.now());
            fresh.fill(about);
            fresh.write(begun.text());
            var known = Stream.concat(about.stream(), begun.offered().stream()).toList();
            new NoteDialog(window, opened.get(), fresh, known, false).open();
        } catch (LibraryException e) {
            Failures.show(Messages.title, e.getMessage(), e);
        }
    }

    private static List<Proposal> standpoint(IWorkbenchWindow window, Opened opened) {
        var library = opened.library().library();
        var standing = new Standing(window.getActivePage(), library);
        return new Standpoint(library).of(standing.element(), standing.typed());
    }

    /**
     * Goes on with a note.
     *
     * @param window the window
     * @param minute the note
     * @param isGoneOn true to say that it was begun before
     */
    static void show(IWorkbenchWindow window, MinuteNote minute, boolean isGoneOn) {
        window.getService(LibrarySession.class).current().ifPresent(opened ->
                new NoteDialog(window, opened, minute, minute.fields(), isGoneOn).open());
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.title);
        shell.setData(LeftNotes.KEY, minute.session());
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        var thread = new WindowThread(area);
        photos = new PhotoWork(new MediaShelf(opened.library().library().root()), thread, this::refusePhoto);
        form = new NoteForm(area, minute, photos, opened.library().isInvented(), this::toggle);
        saver = new NoteSaver(minute, opened.library().sessions(), photos, area, this::saved, this::refuse);
        proposing = new LatestJob<>(Messages.proposing, note -> minute.proposals().of(note), thread, this::proposed);
        form.text().addModifyListener(event -> written());
        NoteKeys.listen(area, this::okPressed, form::paste, number -> chips.at(number).ifPresent(this::toggle));
        form.say(!opened.library().isWritable() ? Messages.readOnly : isGoneOn ? Messages.goneOn : Messages.howToSave);
        showChips();
        propose(0);
        return area;
    }

    private void toggle(Proposal value) {
        if (!isSaving) {
            try {
                minute.toggle(value);
            } catch (IllegalArgumentException e) {
                form.say(e.getMessage());
            }
            showChips();
            propose(0);
        }
    }

    private void written() {
        minute.write(form.text().getText());
        updateButtons();
        propose(PAUSE);
    }

    private void propose(long pause) {
        proposing.ask(EcoreUtil.copy(minute.note()), pause);
    }

    private void proposed(FieldNote note, List<Proposal> found) {
        proposed = found;
        showChips();
    }

    private void showChips() {
        var others = new ArrayList<>(stand);
        others.addAll(proposed);
        var in = minute.fields();
        others.removeIf(in::contains);
        form.show(chips.update(in, others.stream().distinct().limit(Math.max(0, MOST_CHIPS - in.size())).toList()));
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.save, true).setData(Ids.WIDGET_ID, "note.save");
        createButton(parent, IDialogConstants.CANCEL_ID, Messages.later, false).setData(Ids.WIDGET_ID, "note.later");
        createButton(parent, IDialogConstants.ABORT_ID, Messages.drop, false).setData(Ids.WIDGET_ID, "note.drop");
        updateButtons();
    }

    @Override
    protected void buttonPressed(int id) {
        if (id == IDialogConstants.ABORT_ID) {
            close();
            drop();
        } else {
            super.buttonPressed(id);
        }
    }

    private void updateButtons() {
        var save = getButton(IDialogConstants.OK_ID);
        if (save != null) {
            save.setEnabled(!form.text().getText().isBlank() && !isSaving && opened.library().isWritable());
        }
    }

    @Override
    protected void okPressed() {
        if (isSaving || form.text().getText().isBlank()) {
            return;
        }
        if (!opened.library().isWritable()) {
            form.say(Messages.readOnly);
            return;
        }
        setSaving(true);
        if (saver.save()) {
            form.say(Messages.waitingForPhoto);
        }
    }

    private void saved(LoadedFile file) {
        close();
        photos.tidy(minute.note().getMedia());
        minute.drop();
        new NoteSaved(window, opened).show(file);
    }

    private void refuse(String sentence) {
        setSaving(false);
        form.say(sentence);
        form.text().setFocus();
    }

    private void refusePhoto(String sentence) {
        saver.forget();
        setSaving(false);
        form.say(sentence);
    }

    private void setSaving(boolean saving) {
        isSaving = saving;
        form.text().setEditable(!saving);
        updateButtons();
    }

    /** Leaving is no decision: what was written is kept, and the same key goes on with it. */
    @Override
    public boolean close() {
        var keeps = form != null && !isSaving && isWorthKeeping();
        if (proposing != null) {
            proposing.forget();
        }
        var closed = super.close();
        if (closed && !isSaving && !keeps) {
            drop();
        }
        return closed;
    }

    private boolean isWorthKeeping() {
        return !form.text().isDisposed() && !form.text().getText().isBlank() || !minute.note().getMedia().isEmpty();
    }

    private void drop() {
        if (!minute.session().isClosed()) {
            photos.tidy(List.of());
            minute.drop();
        }
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Point getInitialSize() {
        var size = super.getInitialSize();
        var room = window.getShell().getSize();
        return new Point(Math.min(Math.max(size.x, NoteForm.WIDTH), room.x), Math.min(size.y, room.y));
    }
}
