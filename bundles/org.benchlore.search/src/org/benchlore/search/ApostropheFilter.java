// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;

import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/** Takes an ending {@code 's} off and other apostrophes out: 'won't' is typed as 'wont', 'assy's' is 'assy'. */
final class ApostropheFilter extends TokenFilter {

    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);

    ApostropheFilter(TokenStream input) {
        super(input);
    }

    @Override
    public boolean incrementToken() throws IOException {
        if (!input.incrementToken()) {
            return false;
        }
        int length = term.length();
        if (length > 2 && term.charAt(length - 1) == 's' && isApostrophe(term.charAt(length - 2))) {
            length -= 2;
        }
        int kept = 0;
        for (int i = 0; i < length; i++) {
            if (!isApostrophe(term.charAt(i))) {
                term.buffer()[kept++] = term.charAt(i);
            }
        }
        term.setLength(kept);
        return true;
    }

    /** The curly ones are straight by now, since accents were taken off before. */
    private static boolean isApostrophe(char c) {
        return c == '\'';
    }
}
