// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.apache.lucene.index.Term;
import org.apache.lucene.queries.function.FunctionScoreQuery;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.DoubleValuesSource;
import org.apache.lucene.search.NamedMatches;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.benchlore.store.Catalogue;
import org.benchlore.terms.CodeReader;

/**
 * Turns what was typed into a query of the index. Nothing typed is an operator: every character is a word or
 * separates words, so that nothing can be mistyped.
 */
final class TypedQuery {

    private static final int MOST_CHARACTERS = 400;
    private static final int MOST_WORDS = 24;
    private static final int SHORTEST_PREFIX = 2;
    private static final float TITLE = 3f;
    private static final float SYMPTOM = 2.5f;
    private static final float ABOUT = 1.2f;
    private static final float AS_WRITTEN = 0.3f;
    private static final float PREFIX = 1.5f;
    private static final float CODE = 60f;
    private static final float CODE_IN_TEXT = 20f;
    private static final float PHRASE = 2f;

    private final Analyzer analyzer;
    private final CodeLookup library;
    private final String text;
    private final Set<String> codes;
    private final List<Word> words;

    /** One word as typed: its exact form, its stem, and whether it may be the beginning of a longer one. */
    private record Word(String exact, String stem, boolean unfinished) {
    }

    TypedQuery(Analyzer analyzer, Catalogue catalogue, String typed) {
        this.analyzer = analyzer;
        this.library = new CodeLookup(catalogue);
        this.text = typed.length() > MOST_CHARACTERS ? typed.substring(0, MOST_CHARACTERS) : typed;
        this.codes = codes();
        this.words = words().stream().filter(word -> !codes.contains(word.exact())).toList();
    }

    boolean isEmpty() {
        return words.isEmpty() && codes.isEmpty();
    }

    /** Returns the query; {@code all} asks that every word be there, else that half of them be. */
    Query query(boolean all) {
        var every = new BooleanQuery.Builder();
        words.forEach(word -> every.add(anywhere(word), all && isAsked(word) ? Occur.MUST : Occur.SHOULD));
        if (!all) {
            every.setMinimumNumberShouldMatch((words.size() + 1) / 2);
        }
        var query = new BooleanQuery.Builder().add(every.build(), Occur.MUST);
        if (words.size() > 1) {
            query.add(phrase(Fields.TITLE, TITLE), Occur.SHOULD);
            query.add(phrase(Fields.SYMPTOM, SYMPTOM), Occur.SHOULD);
            query.add(phrase(Fields.TEXT, 1f), Occur.SHOULD);
        }
        return weighed(withCodes(query.build()));
    }

    /** Little words such as 'the' help the order but are not asked for, unless nothing else was typed. */
    private boolean isAsked(Word word) {
        return !isLittle(word) || words.stream().allMatch(TypedQuery::isLittle);
    }

    private static boolean isLittle(Word word) {
        return EnglishAnalyzer.ENGLISH_STOP_WORDS_SET.contains(word.exact());
    }

    private Query withCodes(Query byWords) {
        if (codes.isEmpty()) {
            return byWords;
        }
        var query = new BooleanQuery.Builder().add(byWords, Occur.SHOULD);
        for (var code : codes) {
            query.add(named("code " + code, constant(codeQuery(code), CODE)), Occur.SHOULD);
            query.add(named("in the text", constant(term(Fields.WORDS, code), CODE_IN_TEXT)), Occur.SHOULD);
        }
        return query.build();
    }

    private static Query constant(Query query, float score) {
        return new BoostQuery(new ConstantScoreQuery(query), score);
    }

    private Query codeQuery(String code) {
        var query = new BooleanQuery.Builder().add(new TermQuery(new Term(Fields.CODE, code)), Occur.SHOULD);
        library.known(code).forEach(row -> query.add(new TermQuery(new Term(Fields.REFERENCES, row.path())), Occur.SHOULD));
        return query.build();
    }

    /** What was typed is read as a whole, since a code may be written with blanks, and word by word. */
    private Set<String> codes() {
        var found = new LinkedHashSet<String>();
        CodeReader.read(text).forEach(reading -> found.add(reading.key().indexForm()));
        CodeReader.findIn(text).forEach(key -> found.add(key.indexForm()));
        for (var word : text.split("\\s+")) {
            if (word.chars().anyMatch(Character::isDigit)) {
                CodeReader.read(word).forEach(reading -> found.add(reading.key().indexForm()));
            }
        }
        return found;
    }

    private static Query weighed(Query query) {
        return FunctionScoreQuery.boostByValue(query, DoubleValuesSource.fromLongField(Fields.WEIGHT));
    }

    private static Query anywhere(Word word) {
        var best = new ArrayList<Query>();
        best.add(named("in the title", new BoostQuery(term(Fields.TITLE, word.stem()), TITLE)));
        best.add(named("in the symptoms", new BoostQuery(term(Fields.SYMPTOM, word.stem()), SYMPTOM)));
        best.add(named("in the text", term(Fields.TEXT, word.stem())));
        best.add(named("about it", new BoostQuery(term(Fields.ABOUT, word.stem()), ABOUT)));
        best.add(new BoostQuery(term(Fields.WORDS, word.exact()), AS_WRITTEN));
        if (word.unfinished() && word.exact().length() >= SHORTEST_PREFIX) {
            best.add(named("begins with '" + word.exact() + "'",
                    constant(new PrefixQuery(new Term(Fields.WORDS, word.exact())), PREFIX)));
            best.add(named("code begins with '" + word.exact() + "'",
                    constant(new PrefixQuery(new Term(Fields.CODE, word.exact())), PREFIX)));
        }
        return new DisjunctionMaxQuery(best, 0.1f);
    }

    private static Query term(String field, String word) {
        return new TermQuery(new Term(field, word));
    }

    private static Query named(String why, Query query) {
        return NamedMatches.wrapQuery(why, query);
    }

    private Query phrase(String field, float boost) {
        var phrase = new PhraseQuery.Builder().setSlop(2);
        words.forEach(word -> phrase.add(new Term(field, word.stem())));
        return new BoostQuery(phrase.build(), PHRASE * boost);
    }

    private List<Word> words() {
        var stems = tokens(Fields.TEXT);
        var exact = tokens(Fields.WORDS);
        var found = new ArrayList<Word>();
        for (int i = 0; i < Math.min(Math.min(stems.size(), exact.size()), MOST_WORDS); i++) {
            boolean last = i == exact.size() - 1 && exact.get(i).end() == text.length();
            found.add(new Word(exact.get(i).text(), stems.get(i).text(), last));
        }
        return found;
    }

    private record Token(String text, int end) {
    }

    private List<Token> tokens(String field) {
        var tokens = new ArrayList<Token>();
        try (var stream = analyzer.tokenStream(field, text)) {
            var term = stream.addAttribute(CharTermAttribute.class);
            var offset = stream.addAttribute(OffsetAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                tokens.add(new Token(term.toString(), offset.endOffset()));
            }
            stream.end();
        } catch (IOException e) {
            throw new UncheckedIOException("Reading from memory cannot fail", e);
        }
        return tokens;
    }
}
