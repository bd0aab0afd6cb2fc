// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
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
    private final Map<String, FileCheck> files = new ConcurrentHashMap<>();
    private final Set<String> pending = new LinkedHashSet<>();
    private HazardCount hazards = new HazardCount();
    private Bench bench;

    /** What was found in one file, by how far the rules looked. */
    private record FileCheck(List<Problem> alone, List<Problem> withNeighbours, List<Problem> amongAll) {

        private static final FileCheck NOTHING = new FileCheck(List.of(), List.of(), List.of());

        FileCheck among(List<Problem> problems) {
            return new FileCheck(alone, withNeighbours, problems);
        }

        FileCheck near(List<Problem> problems) {
            return new FileCheck(alone, problems, amongAll);
        }

        void addTo(Collection<Problem> all) {
            all.addAll(alone);
            all.addAll(withNeighbours);
            all.addAll(amongAll);
        }
    }

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
        files.clear();
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
        entries.parallelStream().forEach(entry -> files.merge(entry.path(),
                FileCheck.NOTHING.among(ready.amongAll(entry, facts)), (old, now) -> old.among(now.amongAll())));
        return report();
    }

    /** Looks at one file alone and with its neighbours; what was found among all stays. Returns whom its hazards touch. */
    private Set<String> look(String path, Bench ready) {
        var subject = subject(path);
        if (subject.isEmpty()) {
            files.put(path, files.getOrDefault(path, FileCheck.NOTHING).near(List.of()));
            return hazards.put(path, Set.of());
        }
        var among = files.getOrDefault(path, FileCheck.NOTHING).amongAll();
        files.put(path, new FileCheck(ready.alone(subject.get()), ready.withNeighbours(subject.get()), among));
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
            pending.addAll(files.keySet());
        }
        var ready = bench();
        var again = new LinkedHashSet<String>(all);
        changes.removed().forEach(path -> {
            again.addAll(hazards.put(path, Set.of()));
            files.remove(path);
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
        referrers.retainAll(files.keySet());
        referrers.stream().limit(AT_ONCE).forEach(path -> lookNear(path, ready));
        referrers.stream().skip(AT_ONCE).forEach(pending::add);
    }

    private void lookNear(String path, Bench ready) {
        subject(path).ifPresent(subject -> files.computeIfPresent(path,
                (key, known) -> known.near(ready.withNeighbours(subject))));
    }

    private void amongAll(Set<String> again, Bench ready) {
        var facts = hazards.facts(library.catalogue());
        for (var path : List.copyOf(again)) {
            library.catalogue().entry(path).ifPresent(entry -> again.addAll(ready.touched(entry, facts)));
        }
        files.forEach((path, known) -> {
            if (!known.amongAll().isEmpty()) {
                again.add(path);
            }
        });
        again.forEach(path -> library.catalogue().entry(path).ifPresent(entry -> files.compute(path, (key, known) ->
                (known == null ? FileCheck.NOTHING : known).among(ready.amongAll(entry, facts)))));
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
        files.values().forEach(file -> file.addTo(all));
        return bench().suppressions().report(all, library.catalogue(), files.size());
    }

    /**
     * Checks one file now, by all rules.
     *
     * @param path path of a file of the library
     * @return what was found in it
     */
    public synchronized Report of(String path) {
        var found = new ArrayList<Problem>();
        subject(path).ifPresent(subject -> {
            found.addAll(bench().alone(subject));
            found.addAll(bench().withNeighbours(subject));
        });
        library.catalogue().entry(path).ifPresent(entry -> found.addAll(among(entry)));
        return bench().suppressions().report(found, library.catalogue(), 1);
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
        var found = new ArrayList<>(bench().alone(subject));
        found.addAll(bench().withNeighbours(subject));
        return bench().suppressions().report(found, library.catalogue(), 1);
    }
}
