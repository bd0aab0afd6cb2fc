// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.List;
import java.util.Map;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.CharArraySet;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.StopFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.analysis.en.PorterStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.miscellaneous.PerFieldAnalyzerWrapper;
import org.apache.lucene.analysis.standard.StandardTokenizer;

/** How text becomes words. Built in code, so that no look-up of services is needed. */
final class Analyzers {

    /** As they are without their apostrophe. */
    private static final List<String> CONTRACTIONS = List.of("arent", "cant", "couldnt", "didnt", "doesnt", "dont",
            "hadnt", "hasnt", "havent", "isnt", "shouldnt", "wasnt", "werent", "wont", "wouldnt");

    private static final List<String> TELLING = List.of("no", "not");
    /** Words of a question and of whoever asks it. 'Can' is not among them: it is also a bus. */
    private static final List<String> ASKING = List.of("how", "do", "does", "did", "what", "which", "who", "where", "why", "when", "could",
            "should", "would", "please", "i", "my", "we", "our", "you", "your", "he", "she", "his", "her", "has", "have", "had", "been",
            "from");

    private Analyzers() {
    }

    /** Returns the analysis of every field. */
    static Analyzer all() {
        return new PerFieldAnalyzerWrapper(stemmed(), Map.of(
                Fields.WORDS, exact(),
                Fields.START, of(tokens -> new BeginningsFilter(plain(tokens))),
                Fields.TITLE_START, of(tokens -> new BeginningsFilter(plain(tokens))),
                Fields.GRAMS, of(tokens -> new GramFilter(plain(tokens)))));
    }

    /** Words as written, in lower case, without accents and apostrophes. */
    static Analyzer exact() {
        return of(Analyzers::plain);
    }

    /** Words reduced to their stem, little words left out. */
    static Analyzer stemmed() {
        return of(tokens -> new PorterStemFilter(new StopFilter(plain(tokens), littleWords())));
    }

    /** Words that help nobody to find anything. 'No' and 'not' do: 'no drive' is a complaint. */
    private static CharArraySet littleWords() {
        var words = new CharArraySet(CONTRACTIONS, false);
        words.addAll(ASKING);
        for (var each : EnglishAnalyzer.ENGLISH_STOP_WORDS_SET) {
            var word = new String((char[]) each);
            if (!TELLING.contains(word)) {
                words.add(word);
            }
        }
        return words;
    }

    private interface Chain {
        TokenStream over(Tokenizer tokens);
    }

    private static Analyzer of(Chain chain) {
        return new Analyzer() {
            @Override
            protected TokenStreamComponents createComponents(String field) {
                var tokenizer = new StandardTokenizer();
                return new TokenStreamComponents(tokenizer, chain.over(tokenizer));
            }
        };
    }

    private static TokenStream plain(TokenStream tokens) {
        return new ApostropheFilter(new ASCIIFoldingFilter(new LowerCaseFilter(tokens)));
    }
}
