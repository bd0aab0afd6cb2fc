// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.edit.desk.QuickChange;
import org.benchlore.model.NoteStatus;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

/**
 * The lead's monthly view: notes to sort, notes that say the same, fixes to confirm, declined work that failed. One key
 * each; the last one can be taken back.
 */
public final class SortingView extends ViewPart {

    private LibrarySession session;
    private WindowThread thread;
    private DeskTree tree;
    private Label said;
    private LatestJob<Opened, Map<Section, List<DeskLine>>> job;
    private Optional<DeskWork> work = Optional.empty();
    private Optional<Opened> of = Optional.empty();
    private Runnable unlisten = () -> { };

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        thread = new WindowThread(parent);
        GridLayoutFactory.fillDefaults().margins(4, 2).spacing(0, 2).applyTo(parent);
        said = new Label(parent, SWT.WRAP);
        said.setData(Ids.WIDGET_ID, "desk.said");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(said);
        tree = new DeskTree(parent);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.control());
        var keys = new Label(parent, SWT.WRAP);
        keys.setText(Messages.keys);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(keys);
        keys();
        job = new LatestJob<>(Messages.collecting, opened -> new DeskLines(opened.library().library())
                .of(LocalDate.now()), thread, (opened, lines) -> tree.show(lines));
        unlisten = session.onChange(event -> changed());
        changed();
    }

    private void keys() {
        tree.onOpen(line -> new PageOpener(getSite().getPage(), session).open(line.row().address()));
        tree.onOther(line -> line.other().ifPresent(other ->
                new PageOpener(getSite().getPage(), session).open(other.address())));
        tree.on('s', line -> note(line, DeskWork.status(NoteStatus.SUSPECTED), Messages.suspected));
        tree.on('e', line -> note(line, DeskWork.status(NoteStatus.SEEN), Messages.seen));
        tree.on('h', this::held);
        tree.on('r', this::ruledOut);
        tree.on('a', line -> note(line, DeskWork.seenAgain(LocalDate.now()), Messages.seenAgain));
        tree.on('b', line -> line.other().filter(other -> line.section() == Section.ALIKE)
                .ifPresent(other -> note(line, DeskWork.replacedBy(other), Messages.replaced)));
        tree.on('z', line -> takeBack());
        Keys.name(tree.control(), Messages.treeName);
    }

    private void changed() {
        if (tree.control().isDisposed()) {
            return;
        }
        var now = session.current();
        if (!now.map(Opened::library).equals(of.map(Opened::library))) {
            work = now.map(opened -> new DeskWork(opened.library()));
            said.setText(now.isEmpty() ? Messages.noLibrary : Messages.whatItIs);
        }
        of = now;
        now.ifPresentOrElse(opened -> job.ask(opened, 0), () -> {
            job.forget();
            tree.show(Map.of());
        });
    }

    private void held(DeskLine line) {
        if (line.section() != Section.DECLINED) {
            new Question(getSite().getShell(), Messages.heldTitle, Messages.heldQuestion,
                    proof -> apply(line, DeskWork.held(proof), Messages.held)).open();
        }
    }

    private void ruledOut(DeskLine line) {
        if (line.isNote()) {
            new Question(getSite().getShell(), Messages.ruledOutTitle, Messages.ruledOutQuestion,
                    why -> apply(line, DeskWork.ruledOut(why), Messages.ruledOut)).open();
        }
    }

    private void note(DeskLine line, QuickChange.Maker maker, String done) {
        if (line.isNote()) {
            apply(line, maker, done);
        }
    }

    private void apply(DeskLine line, QuickChange.Maker maker, String done) {
        work.ifPresent(desk -> run(() -> {
            desk.apply(line.row().path(), maker);
            return NLS.bind(done, line.row().title());
        }));
    }

    private void takeBack() {
        work.ifPresent(desk -> run(() -> desk.takeBack().map(label -> NLS.bind(Messages.takenBack, label))
                .orElse(Messages.nothingToTakeBack)));
    }

    private interface Doing {
        String it() throws LibraryException;
    }

    private void run(Doing doing) {
        Job.create(Messages.working, monitor -> {
            say(sentence(doing));
        }).schedule();
    }

    private static String sentence(Doing doing) {
        try {
            return doing.it();
        } catch (LibraryException | IllegalArgumentException e) {
            return e.getMessage();
        }
    }

    private void say(String sentence) {
        thread.run(() -> {
            said.setText(sentence.replace("&", "&&"));
            said.getParent().layout();
        });
    }

    @Override
    public void setFocus() {
        tree.control().setFocus();
    }

    @Override
    public void dispose() {
        unlisten.run();
        job.forget();
        super.dispose();
    }
}
