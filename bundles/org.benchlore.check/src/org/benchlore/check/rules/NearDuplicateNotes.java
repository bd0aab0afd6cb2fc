// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.LibraryFacts;
import org.benchlore.check.LibraryRule;
import org.benchlore.check.Severity;
import org.benchlore.model.Kind;
import org.benchlore.model.NoteStatus;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Row;

/** What was learned is written once. */
final class NearDuplicateNotes extends LibraryRule {

    private static final double ALIKE = 0.6;

    NearDuplicateNotes() {
        super(new About("near-duplicate-notes", Severity.WARNING,
                "What was learned is written once",
                "One of the two is corrected, the other is found.",
                "Compares titles and what the notes are about, from the facts; the sorting desk compares "
                        + "whole texts."));
    }

    @Override
    public void check(Entry entry, LibraryFacts facts, Findings findings) {
        entry.row().filter(row -> row.kind() == Kind.NOTE && isOpen(row)).ifPresent(row -> facts.catalogue().rows(Kind.NOTE)
                .filter(other -> other.path().compareTo(row.path()) < 0 && isOpen(other) && isAlike(row, other)).findFirst()
                .ifPresent(other -> findings.add(row.address(), "This note says nearly the same as '" + other.title()
                        + "': put them together, or mark one as superseded")));
    }

    @Override
    public Stream<String> touched(Entry entry, LibraryFacts facts) {
        return entry.row().filter(row -> row.kind() == Kind.NOTE).stream().flatMap(row -> facts.catalogue().rows(Kind.NOTE)
                .filter(other -> isAlike(row, other)).map(Row::path));
    }

    private static boolean isOpen(Row row) {
        return !row.status().equals(NoteStatus.SUPERSEDED.getLiteral()) && !row.status().equals(NoteStatus.RULED_OUT.getLiteral());
    }

    /** Alike are notes on the same component or code, or on none, whose titles share six of ten words. */
    private static boolean isAlike(Row one, Row other) {
        boolean isSameThing = one.components().isEmpty() && other.components().isEmpty()
                || one.components().stream().anyMatch(other.components()::contains) || one.codes().stream()
                .anyMatch(other.codes()::contains);
        if (!isSameThing) {
            return false;
        }
        var own = words(one);
        var both = new HashSet<>(own);
        var theirs = words(other);
        both.retainAll(theirs);
        return !both.isEmpty() && both.size() >= ALIKE * (own.size() + theirs.size() - both.size());
    }

    private static Set<String> words(Row row) {
        return new HashSet<>(List.of(row.title().toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")));
    }
}
