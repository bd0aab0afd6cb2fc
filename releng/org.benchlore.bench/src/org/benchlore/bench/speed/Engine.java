// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.io.IOException;

/** Something that is asked, and timed while it answers. */
interface Engine {

    String PRODUCT = "Benchlore";
    String PRODUCT_ALL = "Benchlore, passages and counts";
    String LUCENE = "Lucene top-10";
    String LUCENE_BARE = "Lucene, nothing read";
    String FTS5 = "FTS5";
    String B_TREE = "SQLite B-tree";

    String name();

    /** Tells whether it has a way to answer such queries at all. */
    boolean knows(QueryClass kind);

    /** Answers with ten rows and returns how many it found, at most ten. */
    int search(QueryClass kind, String typed) throws IOException;
}
