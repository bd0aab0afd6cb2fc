// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.io.IOException;
import java.util.Locale;

import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.FuzzyQuery;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.benchlore.bench.peers.PlainLucene;

/**
 * Plain Lucene, each class of queries in Lucene's own form.
 *
 * @param name how it is called
 * @param lucene the index
 * @param reads whether it reads the stored text of its hits
 */
record LuceneEngine(String name, PlainLucene lucene, boolean reads) implements Engine {

    private static final int ROWS = 10;
    private static final int MOST_FORMS = 50;

    @Override
    public boolean knows(QueryClass kind) {
        return true;
    }

    @Override
    public int search(QueryClass kind, String typed) throws IOException {
        var query = query(kind, typed);
        return reads ? lucene.search(query, ROWS).size() : lucene.searchOnly(query, ROWS);
    }

    private Query query(QueryClass kind, String typed) {
        return switch (kind) {
            case TERM, CODE -> new TermQuery(term(typed));
            case ANY_OF_THREE -> lucene.anyOf(typed);
            case PHRASE -> lucene.phrase(typed);
            case TWO_LETTERS -> new PrefixQuery(term(typed));
            case WORD_AND_LETTERS -> wordAndLetters(typed.split(" "));
            case NEAR -> new FuzzyQuery(term(typed), 1, 1, MOST_FORMS, true);
        };
    }

    private static Query wordAndLetters(String[] words) {
        return new BooleanQuery.Builder().add(new TermQuery(term(words[0])), Occur.MUST)
                .add(new PrefixQuery(term(words[1])), Occur.MUST).build();
    }

    private static Term term(String word) {
        return new Term(PlainLucene.TEXT, word.toLowerCase(Locale.ROOT));
    }
}
