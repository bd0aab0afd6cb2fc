// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.diagnose.Finding;
import org.benchlore.diagnose.Witness;
import org.benchlore.model.Address;
import org.benchlore.model.WeightKind;

/**
 * What ties a finding to a candidate. Each paper ties it as strongly as it is proved; the strongest counts, so that a
 * further paper never loosens what is tied.
 */
public final class Links {

    private final MachineBook book;
    private final CaseFile file;
    private final SymptomWords words;
    private final CaseWords said;
    private final Weights weights;

    /**
     * Makes the links of a machine.
     *
     * @param book the machine
     * @param file its papers
     * @param words compares symptoms
     * @param weights what each counts for
     */
    public Links(MachineBook book, CaseFile file, SymptomWords words, Weights weights) {
        this.book = book;
        this.file = file;
        this.words = words;
        this.said = new CaseWords(book, words);
        this.weights = weights;
    }

    /**
     * Returns everything that ties a finding to a candidate.
     *
     * @param candidate a candidate
     * @param finding a symptom or a code
     * @return witnesses with their weight, in no order
     */
    public List<Witness> of(Candidate candidate, Finding finding) {
        var all = new ArrayList<Witness>();
        ofBook(candidate, finding, all);
        ofNotes(candidate, finding, all);
        ofJobs(candidate, finding, all);
        ofDocuments(candidate, finding, all);
        ofCode(candidate, finding, all);
        return all;
    }

    /**
     * Returns the notes and jobs that speak of a candidate, whatever they say of a finding.
     *
     * @param candidate a candidate
     * @return witnesses without a finding
     */
    public List<Witness> papers(Candidate candidate) {
        var all = new ArrayList<Witness>();
        file.notes().stream().filter(note -> note.supports() && isAbout(candidate, note.cause(), note.component()))
                .forEach(note -> all.add(new Witness(Witness.Kind.NOTE, note.address(), note.title(), Says.of(note),
                        Optional.empty(), 0)));
        file.cases().stream().filter(job -> isAbout(candidate, job.cause(), Optional.empty()))
                .forEach(job -> all.add(new Witness(Witness.Kind.JOB, job.address(), job.title(), Says.of(job),
                        Optional.empty(), 0)));
        return all;
    }

    /** Whether a note or a job speaks of this candidate. */
    static boolean isAbout(Candidate candidate, Optional<Address> cause, Optional<Address> component) {
        return cause.isPresent() ? cause.get().equals(candidate.address())
                : candidate.cause().isEmpty() && component.filter(candidate.address()::equals).isPresent();
    }

    private double match(Candidate candidate, Finding finding, Set<Address> codes, List<String> symptoms) {
        return finding.isCode() ? finding.code().filter(codes::contains).isPresent() ? 1 : 0
                : said.alike(finding.text(), symptoms, candidate.component());
    }

    private void ofBook(Candidate candidate, Finding finding, List<Witness> all) {
        candidate.cause().ifPresent(cause -> {
            var match = match(candidate, finding, CaseNote.addresses(book.library(), cause.getCodes()), cause.getSymptoms());
            add(all, Witness.Kind.BOOK, candidate.address(), candidate.title(), "the book names it", finding,
                    match * weights.of(WeightKind.BOOK_LINKS));
        });
    }

    private void ofNotes(Candidate candidate, Finding finding, List<Witness> all) {
        for (var note : file.notes()) {
            if (note.supports() && isAbout(candidate, note.cause(), note.component())) {
                add(all, Witness.Kind.NOTE, note.address(), note.title(), Says.of(note), finding,
                        Math.max(match(candidate, finding, note.codes(), note.symptoms()),
                                finding.isCode() ? 0 : words.within(finding.text(), note.text()))
                                * weights.links(note.status()) * note.weight());
            }
        }
    }

    private void ofJobs(Candidate candidate, Finding finding, List<Witness> all) {
        for (var job : file.cases()) {
            if (isAbout(candidate, job.cause(), Optional.empty())) {
                add(all, Witness.Kind.JOB, job.address(), job.title(), Says.of(job), finding,
                        match(candidate, finding, job.refers(), List.of()) * weights.of(WeightKind.SEEN_LINKS) * job.weight());
            }
        }
    }

    private void ofDocuments(Candidate candidate, Finding finding, List<Witness> all) {
        var component = book.upwards(candidate.component()).get(0);
        for (var document : file.documents()) {
            if (document.fits() && document.components().contains(component)) {
                add(all, Witness.Kind.DOCUMENT, document.address(), document.title(), "the maker knows of it", finding,
                        match(candidate, finding, document.codes(), document.symptoms()) * weights.of(WeightKind.MAKER_LINKS));
            }
        }
    }

    private void ofCode(Candidate candidate, Finding finding, List<Witness> all) {
        var named = Candidates.components(book, finding);
        if (book.upwards(candidate.component()).stream().anyMatch(named::contains)) {
            add(all, Witness.Kind.CODE, finding.code().orElseThrow(), finding.label(), "the code names the component",
                    finding, weights.of(WeightKind.CODE_LINKS));
        }
    }

    private static void add(List<Witness> all, Witness.Kind kind, Address address, String title, String says,
            Finding finding, double weight) {
        if (weight > 0) {
            all.add(new Witness(kind, address, title, says, Optional.of(finding.id()), weight));
        }
    }
}
