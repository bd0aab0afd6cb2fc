// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.time.LocalDate;
import java.util.List;

import org.benchlore.check.rules.Rules;
import org.benchlore.check.words.TradeWords;
import org.benchlore.model.Glossary;
import org.benchlore.model.Kind;
import org.benchlore.model.compare.Words;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;
import org.benchlore.terms.WordGroups;

/** The rules made ready for a library and a day, and run over one file at a time. Safe for several threads. */
final class Bench {

    private final Rules rules;
    private final LocalDate day;
    private final Neighbours neighbours;
    private final Words words = new Words();
    private final List<ElementRule> elementRules;
    private final List<NeighbourRule> neighbourRules;
    private final List<LibraryRule> libraryRules;

    Bench(Library library, LocalDate day) {
        this.day = day;
        this.neighbours = new Neighbours(library, day);
        this.rules = new Rules(new TradeWords(WordGroups.withBuiltIn(glossary(library))), day);
        this.elementRules = only(ElementRule.class);
        this.neighbourRules = only(NeighbourRule.class);
        this.libraryRules = only(LibraryRule.class);
    }

    private <T extends Rule> List<T> only(Class<T> type) {
        return rules.all().stream().filter(type::isInstance).map(type::cast).toList();
    }

    private static List<List<String>> glossary(Library library) {
        return library.file(Kind.GLOSSARY.word() + Kind.ENDING).flatMap(LoadedFile::root).filter(Glossary.class::isInstance)
                .map(Glossary.class::cast).stream().flatMap(glossary -> glossary.getEntries().stream())
                .map(entry -> List.copyOf(entry.getWords())).toList();
    }

    LocalDate day() {
        return day;
    }

    Rules rules() {
        return rules;
    }

    Suppressions suppressions() {
        return new Suppressions(neighbours.shop());
    }

    List<Problem> alone(Subject subject) {
        var findings = new Findings(subject.path(), words);
        elementRules.forEach(rule -> rule.check(subject, findings.of(rule)));
        return findings.problems();
    }

    List<Problem> withNeighbours(Subject subject) {
        var findings = new Findings(subject.path(), words);
        neighbourRules.forEach(rule -> rule.check(subject, neighbours, findings.of(rule)));
        return findings.problems();
    }

    List<Problem> amongAll(Entry entry, LibraryFacts facts) {
        var findings = new Findings(entry.path(), words);
        libraryRules.forEach(rule -> rule.check(entry, facts, findings.of(rule)));
        return findings.problems();
    }

    /** Paths of files at which library rules must look again when this one changed. */
    List<String> touched(Entry entry, LibraryFacts facts) {
        return libraryRules.stream().flatMap(rule -> rule.touched(entry, facts)).distinct().toList();
    }
}
