// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.benchlore.model.Address;
import org.benchlore.model.Component;

/** What a complaint about one machine has in common with its papers, and which components it names. */
final class CaseWords {

    /** As alike as this, it is the same complaint, whichever component is named. */
    private static final double SAME = 0.75;

    private final MachineBook book;
    private final SymptomWords words;
    private final Map<Address, Set<String>> names;

    CaseWords(MachineBook book, SymptomWords words) {
        this.book = book;
        this.words = words;
        this.names = book.components().entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey,
                entry -> words.words(MachineBook.title(entry.getValue()))));
    }

    /** Everything that the papers of a machine say, to tell the words of the trade from others. */
    static List<String> texts(MachineBook book, CaseFile file) {
        var all = new ArrayList<String>();
        book.components().values().forEach(component -> all.add(MachineBook.title(component)));
        book.functions().forEach(function -> all.add(MachineBook.title(function)));
        book.causes().values().forEach(cause -> {
            all.add(MachineBook.title(cause));
            all.addAll(cause.getSymptoms());
        });
        file.notes().forEach(note -> {
            all.addAll(note.symptoms());
            all.add(note.text());
        });
        file.documents().forEach(document -> all.addAll(document.symptoms()));
        return all;
    }

    /**
     * Says how alike a complaint is to what is known of a component. The name of a component alone is no complaint; where
     * another component is named, what is only a little alike is not meant.
     */
    double alike(String complaint, List<String> symptoms, Component about) {
        var clauses = words.clauses(complaint).stream().mapToDouble(clause -> asOne(clause, symptoms, about)).max().orElse(0);
        return Math.max(asOne(complaint, symptoms, about), SymptomWords.WITHIN * clauses);
    }

    private double asOne(String said, List<String> symptoms, Component about) {
        var best = symptoms.stream().filter(symptom -> !isNameAlone(said, symptom))
                .mapToDouble(symptom -> words.asOne(said, symptom)).max().orElse(0);
        return best < SAME && namesAnother(said, about) ? 0 : best;
    }

    private boolean isNameAlone(String complaint, String symptom) {
        return book.components().values().stream()
                .anyMatch(component -> words.shareOnly(complaint, symptom, MachineBook.title(component)));
    }

    private boolean namesAnother(String complaint, Component about) {
        var said = words.words(complaint);
        var named = names.entrySet().stream().filter(entry -> !entry.getValue().isEmpty() && said.containsAll(entry.getValue()))
                .map(Map.Entry::getKey).collect(Collectors.toSet());
        return !named.isEmpty() && named.stream().noneMatch(one -> isOneLine(one, about) || isInOneChain(one, about));
    }

    private boolean isInOneChain(Address named, Component about) {
        var component = book.components().get(named);
        return book.functions().stream().anyMatch(function -> book.isIn(component, function) && book.isIn(about, function));
    }

    /** Whether one is the other or part of it. */
    private boolean isOneLine(Address named, Component about) {
        return book.upwards(about).contains(named) || book.library().addressOf(about)
                .filter(book.upwards(book.components().get(named))::contains).isPresent();
    }
}
