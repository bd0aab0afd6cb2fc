// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.diagnose.Question.Reply;
import org.benchlore.edit.desk.Proposal;
import org.benchlore.edit.desk.Standpoint;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.note.Standing;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.plan.WholeWindow;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;

/**
 * Says what may be wrong as it is typed, and takes what the next checks show, each at once a new question. It reads the
 * library only; the way that was gone goes into a note where somebody writes it down.
 */
public final class DiagnoseView extends ViewPart {

    private static final int TYPING_PAUSE = 250;

    private final List<Reply> replies = new ArrayList<>();
    private LibrarySession session;
    private DiagnosePane pane;
    private WholeWindow whole;
    private LatestJob<Asked, Outcome> job;
    private Optional<Opened> asked = Optional.empty();
    private Optional<String> subject = Optional.empty();
    private boolean isAnswering;
    private Runnable unlisten = () -> { };

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        var thread = new WindowThread(parent);
        whole = new WholeWindow(getSite().getPage(), Ids.DIAGNOSE_VIEW);
        pane = new DiagnosePane(parent, this::catalogue, getSite(), new DiagnosePane.Follower(this::changed, this::answer,
                this::takeBack, next(), this::begin), this::open);
        job = new LatestJob<>(Messages.weighing, Asked::answer, thread, (question, outcome) -> show(outcome));
        unlisten = session.onChange(event -> thread.run(this::libraryChanged));
        asked = session.current();
        ask(0);
    }

    private Optional<Catalogue> catalogue() {
        return session.current().map(opened -> opened.library().library().catalogue());
    }

    /**
     * Says where somebody stands in the window, to be taken in.
     *
     * @param page the page of the window
     * @param session holds the library
     * @return what is known of the place
     */
    public static List<Proposal> place(IWorkbenchPage page, LibrarySession session) {
        return session.current().map(opened -> opened.library().library()).map(library -> {
            var standing = new Standing(page, library);
            return new Standpoint(library).ofCase(standing.element(), standing.typed());
        }).orElse(List.of());
    }

    /**
     * Shows the view in the whole window: causes and checks are longer than the short place above the pages.
     *
     * @param page where it is shown
     * @param place what is known of where somebody stands
     * @throws PartInitException if it cannot be made
     */
    public static void show(IWorkbenchPage page, List<Proposal> place) throws PartInitException {
        var view = (DiagnoseView) page.showView(Ids.DIAGNOSE_VIEW);
        view.whole.fill();
        view.offer(place);
    }

    /**
     * Takes in a place if nothing stands here yet: a case in hand is never overwritten.
     *
     * @param place what is known of it
     */
    void offer(List<Proposal> place) {
        if (pane.form().isBlank()) {
            pane.form().fill(place);
            changed();
        }
        setFocus();
    }

    private void libraryChanged() {
        var now = session.current();
        if (!now.map(Opened::library).equals(asked.map(Opened::library))) {
            pane.form().fill(List.of());
            replies.clear();
        }
        asked = now;
        ask(TYPING_PAUSE);
    }

    /** Answers belong to the machine whose checks they are. */
    private void changed() {
        var now = pane.form().about().map(Row::id);
        if (!now.equals(subject)) {
            replies.clear();
        }
        subject = now;
        ask(TYPING_PAUSE);
    }

    private void ask(long pause) {
        var opened = session.current();
        var question = pane.form().question(replies);
        if (opened.isPresent() && question.isPresent()) {
            pane.rest();
            job.ask(new Asked(opened.get(), question.get()), pause);
            return;
        }
        job.forget();
        isAnswering = false;
        show(Outcome.refused(opened.map(this::missing).orElse(Messages.noLibrary),
                opened.filter(one -> one.library().isInvented()).isPresent()));
    }

    private void show(Outcome outcome) {
        pane.show(outcome, !replies.isEmpty());
        if (isAnswering) {
            isAnswering = false;
            pane.focusAnswers();
        }
    }

    private void answer(String check, String result) {
        replies.add(new Reply(check, result));
        isAnswering = true;
        ask(0);
    }

    private void takeBack() {
        if (!replies.isEmpty()) {
            replies.remove(replies.size() - 1);
            isAnswering = true;
            ask(0);
        }
    }

    private String missing(Opened opened) {
        return opened.library().library().catalogue().rows(Kind.MACHINE).findAny().isEmpty() ? Messages.noMachines
                : pane.form().problem().orElse(Messages.nothingAsked);
    }

    private DiagnosePane.Next next() {
        return new DiagnosePane.Next(answer -> steps().ifPresent(next -> next.writeDown(answer)),
                (answer, button) -> steps().ifPresent(next -> next.intoJob(answer, button)),
                (answer, button) -> steps().ifPresent(next -> next.plan(answer, button)));
    }

    private Optional<NextSteps> steps() {
        return session.current().map(opened -> new NextSteps(getSite().getWorkbenchWindow(), opened));
    }

    private void open(Address address) {
        whole.giveBack();
        new PageOpener(getSite().getPage(), session).open(address);
    }

    /** Empties the fields and takes in the page that is open. */
    private void begin() {
        pane.form().fill(List.of());
        pane.form().fill(place(getSite().getPage(), session));
        replies.clear();
        changed();
        setFocus();
    }

    /** A note that is begun here is about the unit or machine asked about. */
    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == Address.class && pane != null
                ? adapter.cast(pane.form().about().map(Row::address).orElse(null)) : super.getAdapter(adapter);
    }

    @Override
    public void setFocus() {
        pane.form().focus();
    }

    @Override
    public void dispose() {
        unlisten.run();
        if (job != null) {
            job.forget();
        }
        super.dispose();
    }
}
