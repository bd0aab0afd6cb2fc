// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.MultiTerms;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.TermStates;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.BoostAttribute;
import org.apache.lucene.search.FuzzyTermsEnum;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.StringHelper;

/** The words of an index. */
final class Vocabulary {

    private static final int SHORTEST_MISSPELLING = 4;
    private static final int LONG_WORD = 8;
    private static final int MOST_NEAR = 3;
    private static final int MOST_BEGINNINGS = 8;
    private static final int MOST_LOOKED_AT = 2_000;

    private final IndexSearcher searcher;
    private final IndexReader reader;
    private final Map<Term, TermStates> looked = new HashMap<>();

    Vocabulary(IndexSearcher searcher) {
        this.searcher = searcher;
        this.reader = searcher.getIndexReader();
    }

    private record Known(String word, int elements, float likeness) {
    }

    /** Returns in how many elements a word stands. */
    int elements(String field, String word) throws IOException {
        return states(new Term(field, word)).docFreq();
    }

    boolean has(String field, String word) throws IOException {
        return elements(field, word) > 0;
    }

    /** Returns a query for a word. Where it stands is looked up once, however many queries ask for it. */
    Query term(String field, String word) throws IOException {
        var term = new Term(field, word);
        return new TermQuery(term, states(term));
    }

    private TermStates states(Term term) throws IOException {
        var known = looked.get(term);
        if (known == null) {
            known = TermStates.build(searcher, term, true);
            looked.put(term, known);
        }
        return known;
    }

    /** Tells whether any of these words stands in the library as it was typed. */
    boolean hasAny(List<Typed.Word> words) throws IOException {
        for (var word : words) {
            if (!word.isLittle() && has(Fields.ALL, word.stem())) {
                return true;
            }
        }
        return false;
    }

    /** Tells whether any word begins so. */
    boolean begins(String beginning) throws IOException {
        return hasBeginning(Fields.WORDS, beginning);
    }

    /** Tells whether any word of a field begins so. */
    boolean hasBeginning(String field, String beginning) throws IOException {
        var wanted = new BytesRef(beginning);
        for (var leaf : reader.leaves()) {
            var terms = leaf.reader().terms(field);
            if (terms != null) {
                var each = terms.iterator();
                if (each.seekCeil(wanted) != TermsEnum.SeekStatus.END && StringHelper.startsWith(each.term(), wanted)) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Words that begin alike.
     *
     * @param words the most frequent of them
     * @param isAll whether there are no others
     */
    record Beginning(List<String> words, boolean isAll) {
    }

    /** Returns the words that begin so. */
    Beginning beginning(String beginning) throws IOException {
        var terms = MultiTerms.getTerms(reader, Fields.WORDS);
        var found = new ArrayList<Known>();
        if (terms != null) {
            var each = terms.iterator();
            var wanted = new BytesRef(beginning);
            var status = each.seekCeil(wanted);
            while (status != TermsEnum.SeekStatus.END && StringHelper.startsWith(each.term(), wanted)
                    && found.size() < MOST_LOOKED_AT) {
                found.add(new Known(each.term().utf8ToString(), each.docFreq(), 1));
                status = each.next() == null ? TermsEnum.SeekStatus.END : TermsEnum.SeekStatus.FOUND;
            }
        }
        found.sort(Comparator.comparingInt(Known::elements).reversed().thenComparing(Known::word));
        return new Beginning(found.stream().map(Known::word).limit(MOST_BEGINNINGS).toList(),
                found.size() <= MOST_BEGINNINGS);
    }

    /**
     * Returns the words that are spelt nearly so, the likeliest first: one letter wrong, missing, too many or two
     * swapped; in a long word two. None for words with a digit, where a near one is another thing.
     */
    List<String> near(String word) throws IOException {
        if (word.length() < SHORTEST_MISSPELLING || word.length() > Grouping.LONGEST_WORD
                || word.chars().anyMatch(Character::isDigit)) {
            return List.of();
        }
        var near = near(word, 1, 1);
        return near.isEmpty() && word.length() >= LONG_WORD ? near(word, 2, 1) : near;
    }

    private List<String> near(String word, int edits, int sameStart) throws IOException {
        var terms = MultiTerms.getTerms(reader, Fields.WORDS);
        if (terms == null) {
            return List.of();
        }
        var found = new ArrayList<Known>();
        var each = new FuzzyTermsEnum(terms, new Term(Fields.WORDS, word), edits, sameStart, true);
        var boost = each.attributes().addAttribute(BoostAttribute.class);
        while (each.next() != null && found.size() < MOST_LOOKED_AT) {
            var term = each.term().utf8ToString();
            if (term.chars().noneMatch(Character::isDigit)) {
                found.add(new Known(term, each.docFreq(), boost.getBoost()));
            }
        }
        found.sort(Comparator.comparingDouble((Known known) -> -known.likeness())
                .thenComparing(Comparator.comparingInt(Known::elements).reversed()).thenComparing(Known::word));
        return found.stream().map(Known::word).limit(MOST_NEAR).toList();
    }

    /** Returns the mean number of words of an element, 1 if there is none. */
    double meanWords() throws IOException {
        long words = 0;
        long elements = 0;
        for (var leaf : reader.leaves()) {
            var terms = leaf.reader().terms(Fields.ALL);
            words += terms == null ? 0 : terms.getSumTotalTermFreq();
            elements += terms == null ? 0 : terms.getDocCount();
        }
        return elements == 0 ? 1 : (double) words / elements;
    }

    /** Returns the part of all elements whose words are in the index in pieces, 0 to 1. */
    double shareInPieces() throws IOException {
        long elements = 0;
        for (var leaf : reader.leaves()) {
            var terms = leaf.reader().terms(Fields.GRAMS);
            elements += terms == null ? 0 : terms.getDocCount();
        }
        return reader.maxDoc() == 0 ? 0 : Math.min(1, (double) elements / reader.maxDoc());
    }
}
