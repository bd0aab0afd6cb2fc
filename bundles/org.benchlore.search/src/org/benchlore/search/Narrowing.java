// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.Map;
import java.util.function.UnaryOperator;

import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.Query;

/**
 * Narrows a query to what the hits must be.
 *
 * @param to a value for a facet
 * @param current leaves out what is laid over by newer files
 */
record Narrowing(Map<Facet, String> to, UnaryOperator<Query> current) {

    Query of(Query asked) {
        return of(asked, null);
    }

    /** Narrows by all facets but one, as the counts of that facet need it. */
    Query of(Query asked, Facet but) {
        var narrowed = new BooleanQuery.Builder().add(asked, Occur.MUST);
        boolean any = false;
        for (var each : to.entrySet()) {
            if (each.getKey() != but) {
                narrowed.add(query(each.getKey(), each.getValue()), Occur.FILTER);
                any = true;
            }
        }
        return current.apply(any ? narrowed.build() : asked);
    }

    private static Query query(Facet facet, String value) {
        var exactly = Queries.term(facet.field(), value);
        return facet != Facet.MACHINE ? exactly : new BooleanQuery.Builder().add(exactly, Occur.SHOULD)
                .add(Queries.term(FacetValues.FOR_ALL, FacetValues.FOR_ALL), Occur.SHOULD).build();
    }
}
