// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;

import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/** Cuts every word, its ends marked with {@code _}, into all pieces of three to five characters. */
final class GramFilter extends TokenFilter {

    private static final int SHORTEST = 3;
    private static final int LONGEST = 5;
    private static final String END = "_";

    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private String word = "";
    private int at;
    private int length = SHORTEST;

    GramFilter(TokenStream input) {
        super(input);
    }

    @Override
    public boolean incrementToken() throws IOException {
        while (at + length > word.length()) {
            at = 0;
            if (length < LONGEST && length < word.length()) {
                length++;
            } else if (input.incrementToken()) {
                word = END + term + END;
                length = SHORTEST;
            } else {
                return false;
            }
        }
        term.setEmpty().append(word, at, at + length);
        at++;
        return true;
    }

    @Override
    public void reset() throws IOException {
        super.reset();
        word = "";
        at = 0;
        length = SHORTEST;
    }
}
