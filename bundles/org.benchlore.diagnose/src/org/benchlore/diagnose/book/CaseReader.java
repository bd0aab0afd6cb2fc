// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.diagnose.Finding;
import org.benchlore.diagnose.Named;
import org.benchlore.diagnose.Question;
import org.benchlore.diagnose.QuestionException;
import org.benchlore.diagnose.Witness;
import org.benchlore.diagnose.book.Replies.Answered;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.FaultCode;
import org.benchlore.model.Function;
import org.benchlore.model.Glossary;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.Shop;
import org.benchlore.model.TopElement;
import org.benchlore.model.Unit;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.store.UnknownId;
import org.benchlore.terms.CodeReader;
import org.benchlore.terms.WordGroups;

/** Reads a question against a library. */
public final class CaseReader {

    private final Library library;
    private final SymptomWords words;

    /**
     * Makes a reader.
     *
     * @param library the library
     */
    public CaseReader(Library library) {
        this.library = library;
        this.words = new SymptomWords(WordGroups.withBuiltIn(library.catalogue().rows(Kind.GLOSSARY)
                .flatMap(row -> library.top(row.id()).stream()).map(Glossary.class::cast)
                .flatMap(glossary -> glossary.getEntries().stream()).map(entry -> List.copyOf(entry.getWords())).toList()));
    }

    /**
     * Reads a question.
     *
     * @param question the question
     * @return it with all that bears on it
     * @throws QuestionException if it names something the library does not hold, or nothing at all
     */
    public CaseInHand read(Question question) throws QuestionException {
        var about = about(question.about());
        var unit = Optional.of(about).filter(Unit.class::isInstance).map(Unit.class::cast);
        var machine = machine(about);
        var book = new MachineBook(library, machine);
        var findings = findings(question, book.address());
        if (findings.isEmpty() && question.after().isEmpty()) {
            throw new QuestionException("Nothing was asked: say what was noticed, or give a --code or --after a work");
        }
        var weights = new Weights(library.top("shop").filter(Shop.class::isInstance).map(Shop.class::cast).orElse(null));
        var file = CaseFile.of(book, new Family(book, weights.family()), unit);
        var words = this.words.among(CaseWords.texts(book, file), unit.map(CaseReader::name).orElse(""));
        var work = work(question, book, unit.flatMap(library::addressOf));
        var openings = new Openings(book);
        var probes = new Probes(book, openings, weights);
        return new CaseInHand(new Named(library.addressOf(about).orElseThrow(), ElementTitle.of(about)),
                unit.flatMap(library::addressOf), book, file, words, weights, findings, work,
                failing(book, file, words, weights, findings, work), probes, openings, answered(question, probes, work));
    }

    /** 'Lorry 17' of 'Lorry 17, town cleansing'. */
    private static String name(Unit unit) {
        return ElementTitle.of(unit).split(",")[0];
    }

    private TopElement about(String id) throws QuestionException {
        return library.top(id).filter(top -> top instanceof Machine || top instanceof Unit).orElseThrow(
                () -> new QuestionException(new UnknownId(library.catalogue(), Kind.UNIT, Kind.MACHINE)
                        .says(id, "machine or unit")));
    }

    private Machine machine(TopElement about) throws QuestionException {
        var found = about instanceof Unit unit ? library.resolve(unit.getMachine()) : Optional.of(about);
        return found.filter(Machine.class::isInstance).map(Machine.class::cast).orElseThrow(
                () -> new QuestionException("The unit '" + about.getId()
                        + "' names no machine of this library: add it there"));
    }

    /** Codes come first, those that stand among the words of a complaint too; words among codes are a complaint. */
    private List<Finding> findings(Question question, Address machine) {
        var worded = question.codes().stream().filter(text -> isComplaint(text, machine)).toList();
        var complaints = Stream.concat(question.symptoms().stream(), worded.stream())
                .map(text -> Complaint.read(text, word -> known(word, machine).isPresent())).toList();
        var found = new LinkedHashMap<String, Finding>();
        Stream.concat(question.codes().stream().filter(text -> !worded.contains(text)), complaints.stream().flatMap(one -> one.codes().stream())).map(String::strip)
                .filter(text -> !text.isEmpty()).map(text -> code(text, machine))
                .forEach(finding -> found.putIfAbsent(finding.id(), finding));
        complaints.stream().map(Complaint::words).filter(text -> !text.isEmpty())
                .forEach(text -> found.putIfAbsent("symptom " + text, new Finding("symptom " + text, text, text,
                        Optional.empty(), false)));
        return List.copyOf(found.values());
    }

    private boolean isComplaint(String text, Address machine) {
        return text.strip().indexOf(' ') > 0 && CodeReader.read(text).isEmpty() && known(text, machine).isEmpty();
    }

    /** Two machines may have a page each for one code of a standard: this machine's own is meant. */
    private Optional<Row> known(String text, Address machine) {
        var forms = CodeReader.read(text).stream().map(reading -> reading.key().indexForm()).toList();
        return library.catalogue().rows(Kind.CODE).filter(row -> row.codes().stream()
                .anyMatch(code -> forms.contains(CodeReader.indexForm(code))))
                .min(Comparator.comparing(row -> !row.machines().contains(machine)));
    }

    private Finding code(String text, Address machine) {
        return known(text, machine).map(row -> new Finding("code " + row.id(), label(row), text, Optional.of(row.address()), true))
                .orElseGet(() -> new Finding("code " + text, text, text, Optional.empty(), true));
    }

    private String label(Row row) {
        var code = library.top(row.id()).map(top -> ((FaultCode) top).getCode()).orElse(row.id());
        return code + ": " + row.title();
    }

    private Optional<WorkDone> work(Question question, MachineBook book, Optional<Address> unit) throws QuestionException {
        if (question.after().isEmpty()) {
            return Optional.empty();
        }
        var id = question.after().get();
        var procedure = library.top(id).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .orElseThrow(() -> new QuestionException(
                        new UnknownId(library.catalogue(), Kind.PROCEDURE).says(id, "procedure")));
        return Optional.of(new WorkReader(book).read(procedure, unit));
    }

    private static Optional<Function> failing(MachineBook book, CaseFile file, SymptomWords words, Weights weights,
            List<Finding> findings, Optional<WorkDone> work) {
        var links = new Links(book, file, words, weights);
        var suspected = new LinkedHashMap<Component, Double>();
        for (var candidate : new Candidates(book, file, words).of(findings)) {
            findings.stream().flatMap(finding -> links.of(candidate, finding).stream()).mapToDouble(Witness::weight).max()
                    .ifPresent(weight -> suspected.merge(candidate.component(), weight, Math::max));
        }
        if (findings.isEmpty()) {
            work.ifPresent(done -> done.renewed().stream().sorted().map(book.components()::get)
                    .filter(Objects::nonNull).forEach(component -> suspected.put(component, 1.0)));
        }
        return new Chains(book, words).failing(findings, suspected);
    }

    /** What was read from the job record stands first; an answer of today takes its place. */
    private List<Answered> answered(Question question, Probes probes, Optional<WorkDone> work) throws QuestionException {
        var replies = new Replies(library, probes.all());
        var all = new LinkedHashMap<Address, Answered>();
        work.ifPresent(done -> replies.recorded(done.rounds()).forEach(one -> all.put(one.probe().address(), one)));
        for (var reply : question.replies()) {
            var one = replies.read(reply);
            all.remove(one.probe().address());
            all.put(one.probe().address(), one);
        }
        return List.copyOf(all.values());
    }
}
