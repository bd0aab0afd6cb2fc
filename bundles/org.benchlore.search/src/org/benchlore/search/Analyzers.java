// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.Map;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.en.EnglishMinimalStemFilter;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.en.PorterStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.miscellaneous.PerFieldAnalyzerWrapper;
import org.apache.lucene.analysis.standard.StandardTokenizer;

/** How text becomes words. Built in code, so that no look-up of services is needed. */
final class Analyzers {

    private Analyzers() {
    }

    /** Returns the analysis of every field. */
    static Analyzer all() {
        return new PerFieldAnalyzerWrapper(stemmed(), Map.of(Fields.WORDS, exact()));
    }

    /** Words as written, in lower case and without accents. */
    static Analyzer exact() {
        return new Analyzer() {
            @Override
            protected TokenStreamComponents createComponents(String field) {
                var tokenizer = new StandardTokenizer();
                return new TokenStreamComponents(tokenizer, plain(tokenizer));
            }
        };
    }

    /** Words reduced to their stem. */
    static Analyzer stemmed() {
        return new Analyzer() {
            @Override
            protected TokenStreamComponents createComponents(String field) {
                var tokenizer = new StandardTokenizer();
                var singular = new EnglishMinimalStemFilter(new EnglishPossessiveFilter(plain(tokenizer)));
                return new TokenStreamComponents(tokenizer, new PorterStemFilter(singular));
            }
        };
    }

    private static TokenStream plain(TokenStream tokens) {
        return new ASCIIFoldingFilter(new LowerCaseFilter(tokens));
    }
}
