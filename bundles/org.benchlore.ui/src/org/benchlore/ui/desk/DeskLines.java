// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.desk;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.edit.desk.DeclinedWork;
import org.benchlore.edit.desk.Duplicates;
import org.benchlore.edit.desk.SortingDesk;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.ui.look.Words;
import org.eclipse.osgi.util.NLS;

/** Collects what waits on the desk. Reads files, so not for the window's thread. */
final class DeskLines {

    /** After so many days somebody should know whether a fix held. */
    private static final int DAYS = 30;
    private static final int PER_CENT = 100;
    private static final String BETWEEN = " · ";

    private final Library library;

    DeskLines(Library library) {
        this.library = library;
    }

    Map<Section, List<DeskLine>> of(LocalDate today) {
        var desk = new SortingDesk(library);
        var lines = new EnumMap<Section, List<DeskLine>>(Section.class);
        lines.put(Section.UNSORTED, desk.unsorted().stream()
                .map(row -> new DeskLine(Section.UNSORTED, row, Optional.empty(), facts(row))).toList());
        lines.put(Section.ALIKE, new Duplicates(library).amongUnsorted().stream().map(this::line).toList());
        lines.put(Section.TO_CONFIRM, desk.toConfirm(today, DAYS).stream()
                .map(row -> new DeskLine(Section.TO_CONFIRM, row, Optional.empty(), facts(row))).toList());
        lines.put(Section.DECLINED, desk.declinedThatFailed().stream().map(DeskLines::line).toList());
        return lines;
    }

    private DeskLine line(Duplicates.Pair pair) {
        var words = NLS.bind(Messages.likeness, Math.round(pair.likeness() * PER_CENT), pair.other().title());
        return new DeskLine(Section.ALIKE, pair.one(), Optional.of(pair.other()), words);
    }

    private static DeskLine line(DeclinedWork.Case failed) {
        var words = NLS.bind(Messages.declinedWords, failed.what(), failed.failed().title());
        return new DeskLine(Section.DECLINED, failed.offered(), Optional.of(failed.failed()), words);
    }

    private String facts(Row row) {
        var machines = row.machines().stream().map(library.catalogue()::at).flatMap(Optional::stream).map(Row::title)
                .distinct().collect(Collectors.joining(", "));
        return Stream.of(Words.one(row.kind()), Words.state(row.status()),
                row.date().map(LocalDate::toString).orElse(""), machines)
                .filter(words -> !words.isEmpty()).collect(Collectors.joining(BETWEEN));
    }
}
