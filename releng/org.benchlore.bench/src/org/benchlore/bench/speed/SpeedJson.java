// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.Map;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** What was measured, as JSON: microseconds and bytes. */
final class SpeedJson {

    private final Gson gson = new GsonBuilder().serializeSpecialFloatingPointValues().create();
    private final Measured measured;

    SpeedJson(Measured measured) {
        this.measured = measured;
    }

    JsonObject json() {
        var json = new JsonObject();
        json.add("settings", gson.toJsonTree(measured.settings()));
        json.addProperty("textBytes", measured.textBytes());
        json.addProperty("fileBytes", measured.fileBytes());
        json.add("queries", queries());
        json.add("building", tree(measured.building()));
        json.add("updates", gson.toJsonTree(measured.updates()));
        json.add("opening", gson.toJsonTree(measured.opening()));
        json.add("targets", targets());
        return json;
    }

    private JsonObject tree(Map<String, ?> values) {
        var json = new JsonObject();
        values.forEach((name, value) -> json.add(name, gson.toJsonTree(value)));
        return json;
    }

    private JsonObject queries() {
        var json = new JsonObject();
        for (var kind : QueryClass.values()) {
            json.add(kind.label(), tree(measured.queries().of(kind)));
        }
        return json;
    }

    private JsonArray targets() {
        var all = new JsonArray();
        for (var target : new Targets(measured).all()) {
            var json = new JsonObject();
            json.addProperty("id", target.id());
            json.addProperty("what", target.what());
            if (!Double.isNaN(target.reached())) {
                json.addProperty("reached", target.reached());
            }
            json.addProperty("most", target.most());
            json.addProperty("verdict", target.verdict());
            json.addProperty("remark", target.remark());
            all.add(json);
        }
        return all;
    }
}
