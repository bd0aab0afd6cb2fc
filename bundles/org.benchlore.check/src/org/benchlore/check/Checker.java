// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

import org.benchlore.check.rules.Rules;
import org.benchlore.edit.EditSession;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Changes;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

/**
 * Checks a library by the rules and keeps what was found, file by file. After a change it looks again only where the
 * change can matter: at the file, at a few files that refer to it at once, at many later ({@link #catchUp}), and at
 * those whose facts touch it. Safe for several threads; one check at a time.
 */
public final class Checker {

    /** So many files that refer to a changed one are looked at before the answer is given. */
    private static final int AT_ONCE = 20;

    private final Library library;
    private final Supplier<LocalDate> today;
    private final FileFindings found = new FileFindings();
    private final Set<String> pending = new LinkedHashSet<>();
    private HazardCount hazards = new HazardCount();
    private Bench bench;

    /**
     * Makes a checker; nothing is checked yet.
     *
     * @param library an open library
     * @param today gives the day by which dates are judged
     */
    public Checker(Library library, Supplier<LocalDate> today) {
        this.library = library;
        this.today = today;
    }

    /** The rules as they are used here. */
    public synchronized Rules rules() {
        return bench().rules();
    }

    private Bench bench() {
        if (bench == null || !bench.day().equals(today.get())) {
            bench = new Bench(library, today.get());
        }
        return bench;
    }

    /**
     * Checks every file.
     *
     * @param monitor shows progress by files; may cancel
     * @return what was found
     */
    public synchronized Report all(IProgressMonitor monitor) {
        var entries = List.copyOf(library.catalogue().entries());
        var progress = SubMonitor.convert(monitor, "Checking", entries.size());
        found.clear();
        pending.clear();
        hazards = new HazardCount();
        var ready = bench();
        entries.parallelStream().forEach(entry -> {
            look(entry.path(), ready);
            synchronized (progress) {
                progress.split(1);
            }
        });
        var facts = hazards.facts(library.catalogue());
        entries.parallelStream().forEach(entry -> amongAll(entry, facts, ready));
        return report();
    }

    /** Looks at one file alone and with its neighbours; what was found among all stays. Returns whom its hazards touch. */
    private Set<String> look(String path, Bench ready) {
        var subject = subject(path);
        if (subject.isEmpty()) {
            found.change(path, known -> known.within(List.of(), List.of()));
            return hazards.put(path, Optional.empty());
        }
        var alone = ready.alone(subject.get());
        var near = ready.withNeighbours(subject.get());
        found.change(path, known -> known.within(alone, near));
        return hazards.put(path, HazardCount.of(subject.get()));
    }

    private Optional<Subject> subject(String path) {
        return library.file(path).flatMap(LoadedFile::root).map(top -> new Subject(path, top));
    }

    /**
     * Takes in a change of the library.
     *
     * @param changes what changed
     * @return what is found now; files in {@link #pending} were not looked at again yet
     */
    public synchronized Report changed(Changes changes) {
        var all = new LinkedHashSet<>(changes.changed());
        all.addAll(changes.removed());
        if (all.contains(Kind.GLOSSARY.word() + Kind.ENDING)) {
            bench = null;
            pending.addAll(found.files());
        }
        var ready = bench();
        var again = new LinkedHashSet<String>(all);
        changes.removed().forEach(path -> {
            again.addAll(hazards.put(path, Optional.empty()));
            found.remove(path);
        });
        changes.changed().forEach(path -> again.addAll(look(path, ready)));
        referring(all, ready);
        amongAll(again, ready);
        return report();
    }

    /**
     * Files that refer to what changed come first. What is done after closing is known through a machine's accesses, so
     * where a procedure changed, those that need them follow.
     */
    private void referring(Set<String> changed, Bench ready) {
        var referrers = new LinkedHashSet<String>();
        var further = new LinkedHashSet<String>();
        for (var path : changed) {
            boolean isProcedure = path.startsWith(Kind.PROCEDURE.folder() + "/");
            library.catalogue().referringTo(path).forEach(row -> {
                referrers.add(row.path());
                if (isProcedure && row.kind() == Kind.MACHINE) {
                    library.catalogue().referringTo(row.path()).filter(one -> one.kind() == Kind.PROCEDURE)
                            .map(Row::path).forEach(further::add);
                }
            });
        }
        referrers.addAll(further);
        referrers.removeAll(changed);
        referrers.retainAll(found.files());
        referrers.stream().limit(AT_ONCE).forEach(path -> lookNear(path, ready));
        referrers.stream().skip(AT_ONCE).forEach(pending::add);
    }

    private void lookNear(String path, Bench ready) {
        subject(path).ifPresent(subject -> {
            var near = ready.withNeighbours(subject);
            found.change(path, known -> known.near(near));
        });
    }

    private void amongAll(Set<String> again, Bench ready) {
        var facts = hazards.facts(library.catalogue());
        for (var path : List.copyOf(again)) {
            library.catalogue().entry(path).ifPresent(entry -> again.addAll(ready.touched(entry, facts)));
        }
        found.addFoundAmongAll(again);
        again.forEach(path -> library.catalogue().entry(path).ifPresent(entry -> amongAll(entry, facts, ready)));
    }

    private void amongAll(Entry entry, LibraryFacts facts, Bench ready) {
        var among = ready.amongAll(entry, facts);
        found.change(entry.path(), known -> known.among(among));
    }

    /**
     * Returns the files that a change may touch and that were not looked at again yet.
     *
     * @return paths
     */
    public synchronized Set<String> pending() {
        return Set.copyOf(pending);
    }

    /**
     * Looks at the files that are pending. Call it when nobody waits.
     *
     * @param monitor shows progress by files; when it is cancelled, the rest stays pending
     * @return what is found then
     */
    public synchronized Report catchUp(IProgressMonitor monitor) {
        var progress = SubMonitor.convert(monitor, "Checking again", pending.size());
        var ready = bench();
        for (var path : List.copyOf(pending)) {
            if (progress.isCanceled()) {
                break;
            }
            look(path, ready);
            pending.remove(path);
            progress.worked(1);
        }
        return report();
    }

    /**
     * Returns what is known now.
     *
     * @return everything found so far
     */
    public synchronized Report report() {
        var all = new ArrayList<Problem>();
        found.addTo(all);
        return bench().suppressions().report(all, library.catalogue(), found.files().size());
    }

    /**
     * Checks one file now, by all rules.
     *
     * @param path path of a file of the library
     * @return what was found in it
     */
    public synchronized Report of(String path) {
        var problems = new ArrayList<Problem>();
        subject(path).ifPresent(subject -> {
            problems.addAll(bench().alone(subject));
            problems.addAll(bench().withNeighbours(subject));
        });
        library.catalogue().entry(path).ifPresent(entry -> problems.addAll(among(entry)));
        return bench().suppressions().report(problems, library.catalogue(), 1);
    }

    private List<Problem> among(Entry entry) {
        return bench().amongAll(entry, hazards.facts(library.catalogue()));
    }

    /**
     * Checks the working copy of a session, saved or not, by the rules that look at it and its neighbours.
     *
     * @param session an edit session
     * @return what was found in it
     */
    public synchronized Report of(EditSession session) {
        var subject = new Subject(session.path(), session.element());
        var problems = new ArrayList<>(bench().alone(subject));
        problems.addAll(bench().withNeighbours(subject));
        return bench().suppressions().report(problems, library.catalogue(), 1);
    }
}
