// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.diagnose.Finding;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.FaultCode;

/**
 * Everything that may be the cause: each cause of the machine, and each component that a code, a note or a document
 * names for these findings although no way of failing is recorded for it or for what it is made of.
 */
public final class Candidates {

    private final MachineBook book;
    private final CaseFile file;
    private final SymptomWords words;

    /**
     * Makes the list of a machine.
     *
     * @param book the machine
     * @param file its papers
     * @param words compares symptoms
     */
    public Candidates(MachineBook book, CaseFile file, SymptomWords words) {
        this.book = book;
        this.file = file;
        this.words = words;
    }

    /**
     * Lists what may be the cause.
     *
     * @param findings what was found
     * @return causes of the book, then components
     */
    public List<Candidate> of(List<Finding> findings) {
        var all = new ArrayList<Candidate>();
        book.causes().forEach((address, cause) -> all.add(new Candidate(address, MachineBook.title(cause),
                (Component) cause.eContainer(), Optional.of(cause))));
        var named = new LinkedHashSet<Address>();
        findings.forEach(finding -> named.addAll(named(finding)));
        named.forEach(address -> bare(address).ifPresent(all::add));
        return List.copyOf(all);
    }

    private Set<Address> named(Finding finding) {
        var found = new LinkedHashSet<Address>(components(book, finding));
        file.notes().stream().filter(note -> note.supports() && note.cause().isEmpty() && note.component().isPresent())
                .filter(note -> isNamed(finding, note.codes(), note.symptoms()))
                .forEach(note -> found.add(note.component().get()));
        file.documents().stream().filter(document -> document.fits()
                && isNamed(finding, document.codes(), document.symptoms()))
                .forEach(document -> found.addAll(document.components()));
        return found;
    }

    private boolean isNamed(Finding finding, Set<Address> codes, List<String> symptoms) {
        return finding.isCode() ? finding.code().filter(codes::contains).isPresent()
                : words.alike(finding.text(), symptoms) > 0;
    }

    /** The components that a code speaks of. */
    static Set<Address> components(MachineBook book, Finding finding) {
        return finding.code().flatMap(book.library()::element).filter(FaultCode.class::isInstance)
                .map(code -> CaseNote.addresses(book.library(), ((FaultCode) code).getComponents())).orElse(Set.of());
    }

    private Optional<Candidate> bare(Address address) {
        return Optional.ofNullable(book.components().get(address)).filter(component -> !hasCauses(component))
                .map(component -> new Candidate(address,
                        MachineBook.title(component) + ": way of failing not recorded", component, Optional.empty()));
    }

    private static boolean hasCauses(Component component) {
        return !component.getCauses().isEmpty() || component.getComponents().stream().anyMatch(Candidates::hasCauses);
    }
}
