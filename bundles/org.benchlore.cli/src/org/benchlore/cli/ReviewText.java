// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

import org.benchlore.check.Problem;
import org.benchlore.check.review.PackEntry;
import org.benchlore.workshop.Comparison;
import org.benchlore.workshop.ReviewDesk.Look;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** What a reviewer looks at, as text and as JSON. */
final class ReviewText {

    private final PrintWriter out;

    ReviewText(PrintWriter out) {
        this.out = out;
    }

    void print(Look look) {
        var procedure = look.procedure();
        out.println(procedure.getTitle() + " (" + procedure.getId() + "): " + standing(look));
        list("Changed since the review:", look.since().map(Comparison::sentences).orElse(List.of()));
        list("What the rules find:", look.problems().open().stream().map(ReviewText::line).toList());
        list("Packs that carry it:", look.packs().stream().map(pack -> pack.on() + " " + pack.title() + ", " + pack.out())
                .toList());
    }

    private void list(String head, List<String> lines) {
        if (!lines.isEmpty()) {
            out.println("  " + head);
            lines.forEach(line -> out.println("    " + line));
        }
    }

    private static String standing(Look look) {
        return switch (look.standing()) {
            case DRAFT -> "a draft";
            case AS_REVIEWED -> "as it was reviewed";
            case REVIEWED_WITHOUT_SUM -> "reviewed, but whether it was changed since is not known";
            case CHANGED_SINCE -> "changed since its review" + (look.since().isEmpty()
                    ? ", how is not known: no copy of what was reviewed was kept" : "");
            case WITHDRAWN -> "withdrawn: " + look.procedure().getWithdrawnReason();
        };
    }

    private static String line(Problem problem) {
        return problem.severity().name().toLowerCase(Locale.ROOT) + (problem.place().isEmpty() ? "" : ", " + problem.place())
                + ": " + problem.sentence();
    }

    JsonObject json(Look look) {
        var json = new JsonObject();
        json.addProperty("id", look.procedure().getId());
        json.addProperty("standing", look.standing().name());
        look.since().ifPresent(since -> json.add("changes", strings(since.sentences())));
        json.add("problems", strings(look.problems().open().stream().map(ReviewText::line).toList()));
        var packs = new JsonArray();
        look.packs().forEach(pack -> packs.add(json(pack, look.procedure().getId())));
        json.add("packs", packs);
        return json;
    }

    private static JsonObject json(PackEntry pack, String id) {
        var json = new JsonObject();
        json.addProperty("on", pack.on().toString());
        json.addProperty("title", pack.title());
        json.addProperty("out", pack.out());
        pack.revision(id).ifPresent(revision -> json.addProperty("revision", revision));
        return json;
    }

    private static JsonArray strings(List<String> all) {
        var array = new JsonArray();
        all.forEach(array::add);
        return array;
    }
}
