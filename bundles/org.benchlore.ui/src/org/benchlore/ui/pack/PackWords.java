// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.pack.LeftOut;
import org.benchlore.pack.Packing;
import org.benchlore.pack.Selection;
import org.benchlore.pack.take.Preview;
import org.benchlore.pack.take.Verdict;
import org.benchlore.page.Labels;
import org.eclipse.osgi.util.NLS;

/** What is said of packs, put together from counts and names. */
final class PackWords {

    private PackWords() {
    }

    static String contents(Selection selection) {
        return Stream.of(Kind.values()).filter(kind -> !selection.rows(kind).isEmpty()).map(kind -> {
            int count = selection.rows(kind).size();
            return count + " " + (count == 1 ? Labels.of(kind) : Labels.plural(kind));
        }).collect(Collectors.joining(", "));
    }

    static List<String> leftOut(List<LeftOut> all) {
        return all.stream().map(LeftOut::toString).toList();
    }

    static String made(Packing.Made made) {
        var places = made.written().stream().map(path -> path.resolve("index.html").toFile().exists()
                ? path.resolve("index.html").toString() : path.toString()).collect(Collectors.joining("\n"));
        return NLS.bind(Messages.made, contents(made.selection()), places);
    }

    static String counts(Preview preview) {
        return Stream.of(Verdict.values()).map(verdict -> preview.of(verdict).size() + " " + verdict.word())
                .collect(Collectors.joining(", "));
    }
}
