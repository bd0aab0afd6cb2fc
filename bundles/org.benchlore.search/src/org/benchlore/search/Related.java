// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.LinkedHashSet;
import java.util.List;

import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Row;
import org.benchlore.terms.CodeReader;

/** Finds what belongs to an element: what it refers to, what refers to it, and what shares codes and files with it. */
final class Related {

    private static final List<Kind> WORTH_READING = List.of(Kind.NOTE, Kind.PROCEDURE, Kind.DOCUMENT, Kind.JOB);
    private static final int MOST_SHARED = 100;
    private static final float REFERS = 3;
    private static final float SAME_CODE = 2;

    private Related() {
    }

    static Query query(Row row) {
        var paths = new LinkedHashSet<String>();
        row.references().stream().map(Address::path).filter(path -> !isShop(path)).limit(MOST_SHARED)
                .forEach(paths::add);
        var any = new BooleanQuery.Builder();
        any.add(new BoostQuery(Queries.term(Fields.REFERENCES, row.path()), REFERS), Occur.SHOULD);
        for (var path : paths) {
            any.add(Queries.term(Fields.REFERENCES, path), Occur.SHOULD);
            any.add(Queries.constant(Queries.term(Fields.PATH, path), REFERS * 2), Occur.SHOULD);
        }
        row.codes().stream().limit(MOST_SHARED).map(CodeReader::indexForm).distinct()
                .forEach(code -> any.add(new BoostQuery(Queries.term(Fields.CODE, code), SAME_CODE), Occur.SHOULD));
        return new BooleanQuery.Builder().add(any.build(), Occur.MUST).add(worthReading(), Occur.FILTER)
                .add(new TermQuery(new Term(Fields.PATH, row.path())), Occur.MUST_NOT).build();
    }

    private static boolean isShop(String path) {
        return path.equals(Kind.SHOP.path(Kind.SHOP.word()));
    }

    private static Query worthReading() {
        return new TermInSetQuery(Facet.KIND.field(),
                WORTH_READING.stream().map(kind -> new BytesRef(kind.word())).toList());
    }
}
