// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;

/** Finds elements by the beginnings of words of their title or by their id, to open one that is known already. */
public final class Titles {

    private static final Pattern BREAK = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final int EXACT = 0;
    private static final int TITLE_BEGINS = 1;
    private static final int WORDS_BEGIN = 2;
    private static final int INSIDE = 3;

    private record Found(Row row, int how) {
    }

    private Titles() {
    }

    /**
     * Finds elements by title.
     *
     * @param catalogue the library's facts
     * @param typed beginnings of words in any order, pieces of an id, or nothing for everything
     * @param limit most rows
     * @return rows: the same title first, then by how the title begins, then by title
     */
    public static List<Row> find(Catalogue catalogue, String typed, int limit) {
        var wanted = typed.strip().toLowerCase(Locale.ROOT);
        var words = BREAK.splitAsStream(wanted).filter(word -> !word.isEmpty()).toList();
        if (words.isEmpty() && !wanted.isEmpty()) {
            return List.of();
        }
        var found = new ArrayList<Found>();
        catalogue.rows().forEach(row -> {
            int how = how(row, wanted, words);
            if (how <= INSIDE) {
                found.add(new Found(row, how));
            }
        });
        return found.stream().sorted(Comparator.comparingInt(Found::how)
                .thenComparing(each -> each.row().title(), String.CASE_INSENSITIVE_ORDER)
                .thenComparing(each -> each.row().path())).limit(limit).map(Found::row).toList();
    }

    private static int how(Row row, String wanted, List<String> words) {
        var title = row.title().toLowerCase(Locale.ROOT);
        if (title.equals(wanted) || row.id().equals(wanted)) {
            return EXACT;
        }
        if (title.startsWith(wanted)) {
            return TITLE_BEGINS;
        }
        if (words.stream().allMatch(word -> beginsAWord(title, word))) {
            return WORDS_BEGIN;
        }
        return words.stream().allMatch(word -> title.contains(word) || row.id().contains(word)) ? INSIDE : INSIDE + 1;
    }

    private static boolean beginsAWord(String title, String word) {
        int at = title.indexOf(word);
        while (at >= 0) {
            if (at == 0 || !Character.isLetterOrDigit(title.charAt(at - 1))) {
                return true;
            }
            at = title.indexOf(word, at + 1);
        }
        return false;
    }
}
