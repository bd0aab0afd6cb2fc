// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.Kind;
import org.benchlore.model.Titled;
import org.benchlore.page.Block;
import org.benchlore.page.Page;
import org.benchlore.page.Span;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.ui.session.Opened;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.ImageData;

/** Makes the page of an element away from the window's thread; only the latest wish is met. */
final class PageJob extends Job {

    /**
     * What is to be shown.
     *
     * @param library the library that is open
     * @param input the element
     * @param inner id of an inner element to show, or empty
     */
    record Wish(Optional<Opened> library, ElementInput input, String inner) {
    }

    /**
     * A page that was made.
     *
     * @param page the page, or a plain message in the form of one
     * @param title what the element is called
     * @param kind its kind, if it is there
     * @param pictures its pictures by file
     * @param reveal words to scroll to, or empty
     */
    record Made(Page page, String title, Optional<Kind> kind, Map<String, ImageData> pictures, String reveal) {
    }

    private final Consumer<Made> done;
    private volatile Wish wish;

    /** Makes the job; {@code done} is called on the job's thread. */
    PageJob(Consumer<Made> done) {
        super(Messages.makingPage);
        this.done = done;
        setSystem(true);
        setPriority(INTERACTIVE);
    }

    void show(Wish next) {
        wish = next;
        cancel();
        schedule();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        var now = wish;
        var made = make(now);
        if (now == wish) {
            done.accept(made);
        }
        return Status.OK_STATUS;
    }

    private static Made make(Wish now) {
        var input = now.input();
        if (now.library().isEmpty()) {
            return message(input, Messages.noLibrary);
        }
        var opened = now.library().get();
        var library = opened.library().library();
        if (!library.root().equals(input.library())) {
            return message(input, NLS.bind(Messages.otherLibrary, input.library()));
        }
        var entry = library.catalogue().entry(input.address().path());
        var top = library.file(input.address().path()).flatMap(file -> file.root());
        if (entry.isEmpty() || top.isEmpty()) {
            return message(input, NLS.bind(entry.isEmpty() ? Messages.gone : Messages.unreadable,
                    input.address().path()));
        }
        var page = opened.library().pages().of(top.get());
        var row = entry.get().row();
        return new Made(page, row.map(Row::title).orElse(page.title()), row.map(Row::kind),
                PagePictures.of(page, library.root()), inner(library, input, now.inner()));
    }

    private static Made message(ElementInput input, String words) {
        var blocks = List.<Block>of(new Block.Heading(1, input.getName()), new Block.Paragraph(List.of(Span.of(words))));
        return new Made(new Page(input.getName(), blocks), input.getName(), Optional.empty(), Map.of(), "");
    }

    private static String inner(Library library, ElementInput input, String id) {
        return id.isEmpty() ? "" : library.element(new org.benchlore.model.Address(input.address().path(), id))
                .filter(Titled.class::isInstance).map(element -> ((Titled) element).getTitle()).orElse("");
    }
}
