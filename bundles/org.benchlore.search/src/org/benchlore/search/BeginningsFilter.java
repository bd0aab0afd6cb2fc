// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;

import org.apache.lucene.analysis.CharArraySet;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/** Gives the first two and the first three letters of every word, each once for a text. */
final class BeginningsFilter extends TokenFilter {

    /** Shortest beginning that is given. */
    static final int SHORTEST = 2;
    /** Longest beginning that is given. */
    static final int LONGEST = 3;
    private static final int SOME = 64;

    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private final CharArraySet given = new CharArraySet(SOME, false);
    private int shorter;

    BeginningsFilter(TokenStream input) {
        super(input);
    }

    @Override
    public boolean incrementToken() throws IOException {
        while (shorter >= SHORTEST || input.incrementToken()) {
            term.setLength(shorter >= SHORTEST ? shorter : Math.min(term.length(), LONGEST));
            shorter = term.length() - 1;
            if (term.length() >= SHORTEST && given.add(term.toString())) {
                return true;
            }
        }
        return false;
    }

    @Override
    public void reset() throws IOException {
        super.reset();
        given.clear();
        shorter = 0;
    }
}
