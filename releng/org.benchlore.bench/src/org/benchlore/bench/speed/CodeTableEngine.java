// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.io.IOException;

import org.benchlore.bench.peers.CodeTable;

/** A table with a B-tree: codes alone. */
record CodeTableEngine(CodeTable table) implements Engine {

    private static final int ROWS = 10;

    @Override
    public String name() {
        return B_TREE;
    }

    @Override
    public boolean knows(QueryClass kind) {
        return kind == QueryClass.CODE;
    }

    @Override
    public int search(QueryClass kind, String typed) throws IOException {
        return table.find(typed, ROWS).size();
    }
}
