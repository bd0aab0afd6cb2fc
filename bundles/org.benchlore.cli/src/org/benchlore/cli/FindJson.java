// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.List;
import java.util.Locale;

import org.benchlore.search.Hit;
import org.benchlore.search.Passage;
import org.benchlore.search.Query;
import org.benchlore.search.Results;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** What was found, for programs. */
final class FindJson {

    private FindJson() {
    }

    static JsonObject of(Query query, Results results, List<Passage> passages) {
        var json = new JsonObject();
        json.addProperty("text", query.text());
        json.addProperty("total", results.total());
        json.addProperty("loosened", results.loosened());
        results.meant().ifPresent(meant -> json.addProperty("meant", meant));
        var hits = new JsonArray();
        for (int i = 0; i < passages.size(); i++) {
            hits.add(of(results.hits().get(i), passages.get(i)));
        }
        json.add("hits", hits);
        var counts = new JsonObject();
        results.counts().forEach((facet, found) -> {
            var values = new JsonObject();
            found.forEach(count -> values.addProperty(count.value(), count.hits()));
            counts.add(facet.name().toLowerCase(Locale.ROOT), values);
        });
        json.add("counts", counts);
        return json;
    }

    private static JsonObject of(Hit hit, Passage passage) {
        var row = hit.row();
        var json = new JsonObject();
        json.addProperty("id", row.id());
        json.addProperty("kind", row.kind().word());
        json.addProperty("title", row.title());
        json.addProperty("path", row.path());
        json.addProperty("status", row.status());
        row.date().ifPresent(date -> json.addProperty("date", date.toString()));
        json.addProperty("invented", row.invented());
        json.addProperty("holdsEveryWord", hit.whole());
        json.addProperty("excerpt", passage.text());
        var why = new JsonArray();
        passage.why().forEach(why::add);
        json.add("why", why);
        return json;
    }
}
