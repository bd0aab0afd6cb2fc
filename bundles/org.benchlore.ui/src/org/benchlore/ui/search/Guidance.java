// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.search.Query;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.search.Guide.Action;
import org.benchlore.ui.session.Opened;
import org.eclipse.osgi.util.NLS;

/** What to do where there is nothing to show: no library, nothing typed, nothing found. */
final class Guidance {

    private static final int MOST_WORDS = 12;
    private static final int MOST_LETTERS = 40;

    private final Guide guide;
    private final Doing doing;
    private final LatestJob<Opened, List<String>> examples;
    private final LatestJob<Question, Optional<String>> fewer;
    private Question told;

    /**
     * What the window does when it is asked to.
     *
     * @param type puts a text into the field
     * @param removeFilters removes every filter
     * @param writeNote begins a note with a text
     * @param openDemonstration opens the demonstration library
     * @param openFolder asks for a library's folder
     */
    record Doing(Consumer<String> type, Runnable removeFilters, Consumer<String> writeNote, Runnable openDemonstration,
            Runnable openFolder) {
    }

    Guidance(Guide guide, Doing doing) {
        this.guide = guide;
        this.doing = doing;
        var window = new WindowThread(guide.control());
        examples = new LatestJob<>(Messages.searching,
                opened -> Examples.of(opened.library().library().catalogue()), window, (opened, texts) -> howTo(texts));
        fewer = new LatestJob<>(Messages.searching, Guidance::knownWords, window, this::offerFewer);
    }

    void forget() {
        told = null;
        examples.forget();
        fewer.forget();
    }

    void noLibrary() {
        forget();
        guide.show(Messages.noLibrary,
                List.of(new Action("search.guide.demonstration", Messages.openDemonstration, doing.openDemonstration()),
                        new Action("search.guide.open", Messages.openFolder, doing.openFolder())));
    }

    void nothingTyped(Opened opened) {
        forget();
        guide.show(Messages.howToSearch, List.of());
        examples.ask(opened, 0);
    }

    private void howTo(List<String> texts) {
        var actions = new ArrayList<Action>();
        for (var text : texts) {
            actions.add(new Action("search.guide.example." + actions.size(), escaped(text),
                    () -> doing.type().accept(text)));
        }
        guide.show(actions.isEmpty() ? Messages.howToSearch : Messages.howToSearch + " " + Messages.forExample, actions);
    }

    /** Says so once for a text and its filters, however often it is answered. */
    void nothingFound(Question question) {
        if (question.hasTextOf(told) && question.query().narrowedTo().equals(told.query().narrowedTo())) {
            return;
        }
        forget();
        told = question;
        nothingFound(question, Optional.empty());
        fewer.ask(question, 0);
    }

    private void offerFewer(Question question, Optional<String> known) {
        if (known.isPresent()) {
            nothingFound(question, known);
        }
    }

    private void nothingFound(Question question, Optional<String> known) {
        var text = question.query().text().strip();
        var narrowed = !question.query().narrowedTo().isEmpty();
        var actions = new ArrayList<Action>();
        if (narrowed) {
            actions.add(new Action("search.guide.removeFilters", Messages.searchEverywhere, doing.removeFilters()));
        }
        known.ifPresent(words -> actions.add(new Action("search.guide.fewer",
                NLS.bind(Messages.searchFewer, escaped(words)), () -> doing.type().accept(words))));
        actions.add(new Action("search.guide.note", Messages.writeFirst, () -> doing.writeNote().accept(text)));
        guide.show(NLS.bind(narrowed ? Messages.nothingFoundHere : Messages.nothingFound, shortened(text)), actions);
    }

    /** Leaves out every word that nothing holds, if something is left and something was left out. */
    private static Optional<String> knownWords(Question question) {
        var words = List.of(question.query().text().strip().split("\\s+"));
        if (words.size() < 2 || words.size() > MOST_WORDS) {
            return Optional.empty();
        }
        var search = question.library().library().search();
        var known = words.stream().filter(word -> !search.find(new Query(word, Map.of(), 1, false)).hits().isEmpty())
                .toList();
        return known.isEmpty() || known.size() == words.size() ? Optional.empty() : Optional.of(String.join(" ", known));
    }

    private static String shortened(String text) {
        return text.length() <= MOST_LETTERS ? text
                : text.substring(0, MOST_LETTERS) + "…";
    }

    private static String escaped(String text) {
        return text.replace("&", "&&");
    }
}
