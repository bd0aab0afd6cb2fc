// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.session.SessionEvent;
import org.benchlore.ui.session.SessionMemory;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;

/** One plan for all that is to be done: unit and work are picked by search, and every change plans again. */
public final class PlanView extends ViewPart {

    private static final String ADDING = "org.benchlore.ui.adding.this";
    private static final int PAUSE = 120;
    private static final int[] SHARES = {33, 67};

    private LibrarySession session;
    private WindowThread thread;
    private WholeWindow whole;
    private PlanForm form;
    private PlanBar bar;
    private PlanResult result;
    private LatestJob<Question, Planned> job;
    private Wanted wanted = Wanted.NOTHING;
    private Optional<Planned> shown = Optional.empty();
    private Runnable unlisten = () -> { };
    private Runnable unlistenZoom = () -> { };

    @Override
    public void init(IViewSite site, IMemento memento) throws PartInitException {
        super.init(site, memento);
        wanted = PlanMemory.read(memento);
    }

    @Override
    public void saveState(IMemento memento) {
        PlanMemory.write(memento, wanted);
    }

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        var memory = getSite().getService(SessionMemory.class);
        thread = new WindowThread(parent);
        job = new LatestJob<>(Messages.planning, PlanWork::of, thread, this::show);
        whole = new WholeWindow(getSite().getPage(), Ids.PLAN_VIEW);
        var sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        form = new PlanForm(sash, "plan", this::catalogue, this::change);
        var right = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(right);
        bar = new PlanBar(right, this::printCard, this::startJob, this::weigh, this::startOver);
        result = new PlanResult(right, memory.zoom(), this::open);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(result.control());
        sash.setWeights(SHARES);
        unlisten = session.onChange(this::changed);
        unlistenZoom = memory.onZoom(result::zoom);
        session.current().ifPresent(opened -> wanted = wanted.knownTo(catalogue(opened)));
        ask();
    }

    private Optional<Catalogue> catalogue() {
        return session.current().map(PlanView::catalogue);
    }

    private static Catalogue catalogue(Opened opened) {
        return opened.library().library().catalogue();
    }

    private void changed(SessionEvent event) {
        if (event instanceof SessionEvent.LibraryOpened opened) {
            wanted = wanted.knownTo(catalogue(opened.now()));
            bar.say("");
        }
        ask();
    }

    private void change(UnaryOperator<Wanted> change) {
        wanted = change.apply(wanted);
        bar.say("");
        bar.enable(false);
        ask();
    }

    private void ask() {
        job.ask(new Question(session.current(), wanted, LocalDate.now()), PAUSE);
    }

    private void show(Question question, Planned planned) {
        shown = Optional.of(planned);
        form.show(question.wanted(), planned.lines());
        bar.enable(planned.plan().isPresent());
        result.show(planned);
    }

    /**
     * Shows the view in the whole window, since a plan is read beside what it is made from.
     *
     * @param page where it is shown
     * @return the view
     * @throws PartInitException if it cannot be made
     */
    public static PlanView show(IWorkbenchPage page) throws PartInitException {
        var view = (PlanView) page.showView(Ids.PLAN_VIEW);
        view.whole.fill();
        view.setFocus();
        return view;
    }

    /**
     * Adds an element to what is planned: a procedure as work, a unit or machine as what it is done on.
     *
     * @param row the element
     */
    public void add(Row row) {
        change(it -> row.kind() == Kind.PROCEDURE ? it.adding(row.id()) : it.on(row.id()));
    }

    /**
     * Takes what stands in a job in place of what was picked.
     *
     * @param subject id of the unit
     * @param work ids of procedures to be done
     * @param open ids of accesses that are open
     * @param done ids of procedures that are done
     */
    public void take(String subject, List<String> work, List<String> open, List<String> done) {
        change(it -> new Wanted(subject, work, open, done));
    }

    private void open(Address address) {
        whole.giveBack();
        new PageOpener(getSite().getPage(), session).open(address);
    }

    private void startJob() {
        session.current().ifPresent(opened -> shown.flatMap(Planned::plan).ifPresent(plan ->
                new JobStarter(getSite().getWorkbenchWindow(), opened, bar::say, this::open).start(plan)));
    }

    /** By its command, since that view knows this one. */
    private void weigh() {
        var command = getSite().getService(ICommandService.class).getCommand(ADDING);
        var filled = ParameterizedCommand.generateCommand(command, Map.of("unit", wanted.subject(), "procedures",
                String.join(",", wanted.work()), "open", String.join(",", wanted.open()), "done", String.join(",", wanted.done())));
        try {
            getSite().getService(IHandlerService.class).executeCommand(filled, null);
        } catch (CommandException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
    }

    private void startOver() {
        change(it -> Wanted.NOTHING);
        form.clear();
    }

    private void printCard() {
        session.current().ifPresent(opened -> shown.filter(planned -> planned.plan().isPresent()).ifPresent(planned -> {
            var file = new CardFile(opened.library().library().root(), planned.card());
            Job.create(Messages.writingCard, monitor -> {
                write(file, planned.card().title());
            }).schedule();
        }));
    }

    private void write(CardFile card, String title) {
        try {
            var file = card.write(title);
            thread.run(() -> written(file));
        } catch (IOException e) {
            Failures.log(Messages.cardNotWritten, e);
            thread.run(() -> bar.say(Messages.cardNotWritten));
        }
    }

    private void written(Path file) {
        bar.say(NLS.bind(Program.launch(file.toUri().toString()) ? Messages.cardOpened : Messages.cardLies, file));
    }

    @Override
    public void setFocus() {
        form.focus();
    }

    @Override
    public void dispose() {
        unlisten.run();
        unlistenZoom.run();
        job.forget();
        super.dispose();
    }
}
