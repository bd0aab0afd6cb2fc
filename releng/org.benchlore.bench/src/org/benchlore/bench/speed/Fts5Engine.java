// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.io.IOException;

import org.benchlore.bench.peers.Fts5;

/** SQLite's full-text search; it has no near spelling. */
record Fts5Engine(Fts5 table) implements Engine {

    private static final int ROWS = 10;

    @Override
    public String name() {
        return FTS5;
    }

    @Override
    public boolean knows(QueryClass kind) {
        return kind != QueryClass.NEAR;
    }

    @Override
    public int search(QueryClass kind, String typed) throws IOException {
        return table.search(query(kind, typed), ROWS).size();
    }

    private static String query(QueryClass kind, String typed) {
        return switch (kind) {
            case TERM, CODE, PHRASE, NEAR -> Fts5.quoted(typed);
            case ANY_OF_THREE -> Fts5.anyOf(typed);
            case TWO_LETTERS -> Fts5.quoted(typed) + "*";
            case WORD_AND_LETTERS -> {
                var words = typed.split(" ");
                yield Fts5.quoted(words[0]) + " AND " + Fts5.quoted(words[1]) + "*";
            }
        };
    }
}
