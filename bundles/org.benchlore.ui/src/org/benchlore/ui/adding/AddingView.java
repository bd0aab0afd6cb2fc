// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

import org.benchlore.model.Address;
import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Figure;
import org.benchlore.plan.adding.Proposal;
import org.benchlore.store.Catalogue;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.plan.PlanMemory;
import org.benchlore.ui.plan.PlanView;
import org.benchlore.ui.plan.Wanted;
import org.benchlore.ui.plan.WholeWindow;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.session.SessionEvent;
import org.benchlore.ui.session.SessionMemory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;

/** What is worth adding while a machine is open: every figure can be changed on the spot, and a person chooses. */
public final class AddingView extends ViewPart {

    private static final int PAUSE = 150;
    private static final String KEEP = "keep";

    private LibrarySession session;
    private WholeWindow whole;
    private AddingPane pane;
    private LatestJob<Question, Weighed> job;
    private Wanted wanted = Wanted.NOTHING;
    private OptionalInt keep = OptionalInt.empty();
    private Changes changes = Changes.NONE;
    private Optional<Weighed> shown = Optional.empty();
    private Optional<Adding> own = Optional.empty();
    private Optional<String> jobId = Optional.empty();
    private Runnable unlisten = () -> { };
    private Runnable unlistenZoom = () -> { };

    @Override
    public void init(IViewSite site, IMemento memento) throws PartInitException {
        super.init(site, memento);
        wanted = PlanMemory.read(memento);
        var years = memento == null ? null : memento.getInteger(KEEP);
        keep = years == null ? OptionalInt.empty() : OptionalInt.of(years);
    }

    @Override
    public void saveState(IMemento memento) {
        PlanMemory.write(memento, wanted);
        keep.ifPresent(years -> memento.putInteger(KEEP, years));
    }

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        var memory = getSite().getService(SessionMemory.class);
        job = new LatestJob<>(Messages.weighing, AddingWork::of, new WindowThread(parent), this::show);
        whole = new WholeWindow(getSite().getPage(), Ids.ADDING_VIEW);
        pane = new AddingPane(parent, this::catalogue, memory.zoom(), new Told());
        pane.form().keep(keep);
        unlisten = session.onChange(this::changed);
        unlistenZoom = memory.onZoom(pane::zoom);
        catalogue().ifPresent(known -> wanted = wanted.knownTo(known));
        ask();
    }

    /**
     * Shows the view in the whole window, since figures are read beside what they stand for.
     *
     * @param page where it is shown
     * @return the view
     * @throws PartInitException if it cannot be made
     */
    public static AddingView show(IWorkbenchPage page) throws PartInitException {
        var view = (AddingView) page.showView(Ids.ADDING_VIEW);
        view.whole.fill();
        view.setFocus();
        return view;
    }

    /**
     * Weighs something else in place of what was picked.
     *
     * @param other what is done, and where the machine stands
     * @param ofJob id of the job that it is done in, into which offers are written
     */
    public void use(Wanted other, Optional<String> ofJob) {
        change(it -> other);
        jobId = ofJob;
    }

    /**
     * Weighs more, or the same work on something else.
     *
     * @param more how what is picked changes
     */
    public void change(UnaryOperator<Wanted> more) {
        var before = wanted;
        wanted = more.apply(wanted);
        if (!before.subject().equals(wanted.subject())) {
            jobId = Optional.empty();
            changes = Changes.NONE;
        }
        afresh();
    }

    private Optional<Catalogue> catalogue() {
        return session.current().map(opened -> opened.library().library().catalogue());
    }

    private void changed(SessionEvent event) {
        if (event instanceof SessionEvent.LibraryOpened opened) {
            wanted = wanted.knownTo(catalogue(opened.now()));
            changes = Changes.NONE;
            jobId = Optional.empty();
        }
        afresh();
    }

    private static Catalogue catalogue(Opened opened) {
        return opened.library().library().catalogue();
    }

    /** Plans and counts anew. */
    private void afresh() {
        own = Optional.empty();
        ask();
    }

    private void ask() {
        pane.bar().working(true);
        job.ask(new Question(session.current(), wanted, keep, LocalDate.now(), changes, own), own.isPresent() ? 0 : PAUSE);
    }

    private void show(Question question, Weighed weighed) {
        shown = Optional.of(weighed);
        own = weighed.own();
        pane.bar().working(false);
        pane.bar().say("");
        pane.form().show(question.wanted(), weighed.lines());
        pane.show(weighed);
    }

    private void intoPlan(Adding adding) {
        var library = session.current().orElseThrow().library().library();
        var ticked = adding.proposals().stream().filter(one -> pane.ticked().contains(one.id())).toList();
        var written = ticked.stream().map(Proposal::id).filter(id -> library.top(id).isPresent()).toList();
        if (written.isEmpty()) {
            pane.bar().say(NLS.bind(Messages.onlyNoted, ticked.get(0).title()));
            return;
        }
        var work = new ArrayList<>(wanted.work());
        work.addAll(written);
        try {
            PlanView.show(getSite().getPage()).take(wanted.subject(), List.copyOf(work), wanted.open(), wanted.done());
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
        ticked.stream().filter(one -> !written.contains(one.id())).findFirst()
                .ifPresent(one -> pane.bar().say(NLS.bind(Messages.onlyNoted, one.title())));
    }

    @Override
    public void setFocus() {
        pane.focus();
    }

    @Override
    public void dispose() {
        unlisten.run();
        unlistenZoom.run();
        job.forget();
        super.dispose();
    }

    /** What somebody does in the view. */
    private final class Told implements Follower {

        @Override
        public void change(UnaryOperator<Wanted> change) {
            AddingView.this.change(change);
        }

        @Override
        public void keep(OptionalInt years) {
            keep = years;
            afresh();
        }

        @Override
        public void figure(String proposal, Figure figure, BigDecimal value) {
            changes = changes.with(proposal, figure, value);
            ask();
        }

        @Override
        public void reset(String proposal, Figure figure) {
            changes = changes.without(proposal, figure);
            ask();
        }

        @Override
        public void resetAll(String proposal) {
            changes = changes.without(proposal);
            ask();
        }

        @Override
        public void sheet() {
            session.current().ifPresent(opened -> shown.flatMap(Weighed::adding).ifPresent(adding -> new SheetStart(
                    getSite().getWorkbenchWindow(), opened, pane.bar()::say).open(adding, jobId, pane.advice())));
        }

        @Override
        public void intoPlan() {
            shown.flatMap(Weighed::adding).filter(adding -> !pane.ticked().isEmpty()).ifPresent(AddingView.this::intoPlan);
        }

        @Override
        public void stop() {
            job.forget();
            pane.bar().working(false);
            pane.bar().say(Messages.stopped);
        }

        @Override
        public void startOver() {
            changes = Changes.NONE;
            keep = OptionalInt.empty();
            pane.clear();
            AddingView.this.change(it -> Wanted.NOTHING);
        }

        @Override
        public void open(Address address) {
            whole.giveBack();
            new PageOpener(getSite().getPage(), session).open(address);
        }
    }
}
