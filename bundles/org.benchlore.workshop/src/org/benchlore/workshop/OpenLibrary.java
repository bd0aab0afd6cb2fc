// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Random;

import org.benchlore.check.review.ReviewKeeper;
import org.benchlore.check.review.ReviewedCopies;
import org.benchlore.diagnose.Diagnoses;
import org.benchlore.edit.Sessions;
import org.benchlore.edit.draft.Drafts;
import org.benchlore.evidence.CountingRules;
import org.benchlore.evidence.Evidence;
import org.benchlore.model.Kind;
import org.benchlore.model.Shop;
import org.benchlore.page.DiagnosisPage;
import org.benchlore.pack.Packing;
import org.benchlore.pack.learn.Trainings;
import org.benchlore.pack.take.Taking;
import org.benchlore.page.Pages;
import org.benchlore.plan.Planner;
import org.benchlore.plan.adding.Adder;
import org.benchlore.search.SearchIndex;
import org.benchlore.store.Changes;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;

/** A library that is open, with the services over it. Closing it closes them. */
public final class OpenLibrary implements AutoCloseable {

    private final Library library;
    private final SearchIndex search;
    private final Pages pages;
    private final Planner planner;
    private final Path draftsFolder;
    /** Made when they are asked for: a look-up from the terminal needs none of them. */
    private Sessions sessions;
    private Drafts drafts;
    private Evidence evidence;
    private Checks checks;

    OpenLibrary(Library library, SearchIndex search, Path drafts) {
        this.library = library;
        this.search = search;
        this.pages = new Pages(library);
        this.planner = new Planner(library);
        this.draftsFolder = drafts;
        library.onChange(this::index);
    }

    /**
     * Returns the library.
     *
     * @return the open library
     */
    public Library library() {
        return library;
    }

    /**
     * Returns the search over it.
     *
     * @return the index, which follows changes by itself
     */
    public SearchIndex search() {
        return search;
    }

    /**
     * Returns the maker of pages.
     *
     * @return the pages of this library
     */
    public Pages pages() {
        return pages;
    }

    /**
     * Returns the maker of plans.
     *
     * @return plans over this library
     */
    public Planner planner() {
        return planner;
    }

    /**
     * Returns what answers 'what may be wrong'. Each call makes one; it belongs to one thread.
     *
     * @return answers from the library as it is now
     */
    public Diagnoses diagnoses() {
        return new Diagnoses(library);
    }

    /**
     * Returns the maker of pages of such answers.
     *
     * @return it
     */
    public DiagnosisPage diagnosisPages() {
        return new DiagnosisPage(isInvented());
    }

    /**
     * Returns the edit sessions over it, one for each file that is being edited.
     *
     * @return the sessions
     */
    public synchronized Sessions sessions() {
        if (sessions == null) {
            sessions = new Sessions(library, new Random());
            ReviewKeeper.follow(sessions, reviewedCopies());
        }
        return sessions;
    }

    /**
     * Returns the drafts of what was not saved.
     *
     * @return the drafts in the user's own folder
     */
    public synchronized Drafts drafts() {
        if (drafts == null) {
            drafts = new Drafts(draftsFolder);
        }
        return drafts;
    }

    /**
     * Returns what its jobs and notes say.
     *
     * @return the evidence, which follows changes by itself
     */
    public synchronized Evidence evidence() {
        if (evidence == null) {
            evidence = Evidence.following(library);
        }
        return evidence;
    }

    /**
     * Returns what finds things worth adding to a plan.
     *
     * @return the service over this library's plans and evidence
     */
    public Adder adder() {
        return new Adder(library, planner, evidence());
    }

    /**
     * Returns how the shop counts.
     *
     * @return the figures of its shop's file, as they are now
     */
    public CountingRules countingRules() {
        return library.catalogue().rows(Kind.SHOP).findFirst().flatMap(row -> library.top(row.id()))
                .filter(Shop.class::isInstance).map(Shop.class::cast).map(CountingRules::of)
                .orElseGet(CountingRules::usual);
    }

    /**
     * Returns the rules over it and what they find. Nothing is checked before it is asked for; then it follows changes by
     * itself.
     *
     * @return the checks
     */
    public synchronized Checks checks() {
        if (checks == null) {
            checks = new Checks(library, LocalDate::now);
        }
        return checks;
    }

    /**
     * Returns what reviews procedures and withdraws them.
     *
     * @return the reviews of this library
     */
    public ReviewDesk reviews() {
        return new ReviewDesk(this);
    }

    /**
     * Returns what tells versions of elements apart.
     *
     * @return comparisons in this library
     */
    public Comparisons comparisons() {
        return new Comparisons(this);
    }

    /**
     * Returns the copies of procedures as they were reviewed. They are kept by themselves as soon as there are sessions.
     *
     * @return the copies of this library
     */
    public ReviewedCopies reviewedCopies() {
        return new ReviewedCopies(library.root().resolve(".benchlore").resolve("reviewed"));
    }

    /**
     * Returns what makes packs of it.
     *
     * @return the maker, for packs of today
     */
    public Packing packing() {
        return new Packing(library, LocalDate.now());
    }

    /**
     * Returns what takes packs into it.
     *
     * @return the taking
     */
    public Taking taking() {
        return new Taking(library);
    }

    /**
     * Returns what brings the progress of learners into its shop.
     *
     * @return the trainings
     */
    public Trainings trainings() {
        return new Trainings(library);
    }

    /**
     * Returns what people call the library.
     *
     * @return title of the shop, or the folder's name
     */
    public String title() {
        return library.catalogue().rows(Kind.SHOP).map(Row::title).findFirst()
                .orElseGet(() -> String.valueOf(library.root().getFileName()));
    }

    /**
     * Tells whether the library's folder can be written at all.
     *
     * @return false if everything is read-only
     */
    public boolean isWritable() {
        return Files.isWritable(library.root());
    }

    /**
     * Tells whether the library holds invented data.
     *
     * @return true if its shop is marked as invented
     */
    public boolean isInvented() {
        return library.catalogue().rows(Kind.SHOP).anyMatch(Row::invented);
    }

    /**
     * Takes in what was changed on the disk.
     *
     * @param monitor shows progress by files; may cancel
     * @return what changed
     * @throws LibraryException if the library's folder cannot be read any more
     */
    public Changes refresh(IProgressMonitor monitor) throws LibraryException {
        try {
            return library.refresh(monitor);
        } catch (IOException e) {
            throw new LibraryException("The library at " + library.root()
                    + " cannot be read any more: check that its disk is there", e);
        }
    }

    /**
     * Keeps on the disk what is known of the last changes, for other processes and the next start. It changes nothing in
     * the library; call it when nobody waits.
     */
    public void settle() {
        try {
            search.commit();
            library.keep();
        } catch (IOException e) {
            System.getLogger(OpenLibrary.class.getName()).log(System.Logger.Level.INFO,
                    "What is known of the last changes could not be kept; the next start takes longer", e);
        }
    }

    private void index(Changes changes) {
        try {
            search.update(changes, new NullProgressMonitor());
        } catch (IOException e) {
            System.getLogger(OpenLibrary.class.getName())
                    .log(System.Logger.Level.ERROR, "The search index could not take in a change; run 'index'", e);
        }
    }

    @Override
    public synchronized void close() {
        try (library; var opened = drafts) {
            search.close();
        } catch (IOException e) {
            System.getLogger(OpenLibrary.class.getName())
                    .log(System.Logger.Level.WARNING, "The search index could not be closed well", e);
        }
    }
}
