// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.diagnose.Finding;
import org.benchlore.diagnose.Named;
import org.benchlore.diagnose.Near;
import org.benchlore.model.Address;

/** Finds what is written that comes nearest in words to a complaint. */
public final class Nearest {

    /** Less than a fourth of the words shared is chance. */
    private static final double LEAST = 0.25;
    private static final int MOST = 5;

    private final CaseInHand now;

    /**
     * Makes it for a case.
     *
     * @param now the case
     */
    public Nearest(CaseInHand now) {
        this.now = now;
    }

    /**
     * Lists what comes nearest to a complaint.
     *
     * @param finding a complaint that ties to nothing
     * @return the nearest first, at most five, each once with what it is written of; nothing for a code
     */
    public List<Near> to(Finding finding) {
        if (finding.isCode()) {
            return List.of();
        }
        var shares = new HashMap<String, Double>();
        var written = written();
        written.keySet().forEach(text -> shares.put(text, now.words().near(finding.text(), text)));
        return written.entrySet().stream().filter(entry -> shares.get(entry.getKey()) >= LEAST)
                .sorted(Comparator.comparingDouble((Map.Entry<String, Set<Named>> entry) -> -shares.get(entry.getKey()))
                        .thenComparing(Map.Entry::getKey))
                .limit(MOST).map(entry -> new Near(finding, entry.getKey(), List.copyOf(entry.getValue()))).toList();
    }

    /** The signs of each cause by the book and by notes, and what it is called. */
    private Map<String, Set<Named>> written() {
        var all = new LinkedHashMap<String, Set<Named>>();
        now.book().causes().forEach((address, cause) -> {
            var named = new Named(address, MachineBook.title(cause));
            Stream.of(cause.getSymptoms().stream(), symptoms(address), Stream.of(named.title())).flatMap(one -> one)
                    .forEach(text -> all.computeIfAbsent(text, one -> new LinkedHashSet<>()).add(named));
        });
        return all;
    }

    private Stream<String> symptoms(Address cause) {
        return now.file().notes().stream().filter(note -> note.supports() && note.cause().filter(cause::equals).isPresent())
                .flatMap(note -> note.symptoms().stream());
    }
}
