// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.List;

import org.benchlore.plan.Minutes;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanItem;
import org.benchlore.plan.PlanPrice.PriceLine;
import org.benchlore.plan.PlanTimes;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** Writes a plan as JSON: minutes as numbers, money as text with two decimals, ids and titles. */
final class PlanJson {

    JsonObject of(Plan plan) {
        var json = new JsonObject();
        asked(json, plan);
        found(json, plan);
        json.add("items", all(plan.items().stream().map(PlanJson::item).toList()));
        lists(json, plan);
        json.add("price", price(plan));
        compared(json, plan);
        json.add("remarks", texts(plan.remarks()));
        return json;
    }

    private static void asked(JsonObject json, Plan plan) {
        json.addProperty("machine", plan.machine().getId());
        plan.unit().ifPresent(unit -> json.addProperty("unit", unit.getId()));
        json.addProperty("invented", plan.machine().isInvented());
        json.add("procedures", texts(plan.request().procedures()));
        json.add("open", texts(plan.request().open()));
        json.add("done", texts(plan.request().done()));
    }

    private static void found(JsonObject json, Plan plan) {
        json.addProperty("exact", plan.solution().isExact());
        json.addProperty("costCents", plan.solution().cost());
        json.addProperty("gapCents", plan.solution().gap());
        json.addProperty("needsSenior", plan.needsSenior());
        json.add("minutes", minutes(plan.times().minutes()));
        json.add("chargedMinutes", minutes(plan.times().billed()));
        json.addProperty("unattendedMinutes", plan.times().unattended());
        json.addProperty("earliestHandBack", plan.times().handBack().toString());
        json.add("opened", texts(plan.solution().openings()));
    }

    private static void compared(JsonObject json, Plan plan) {
        plan.visits().ifPresent(visits -> {
            var saved = new JsonObject();
            saved.addProperty("minutes", visits.savedMinutes());
            saved.addProperty("money", visits.savedMoney().toPlainString());
            json.add("savedAgainstSeparateVisits", saved);
        });
        plan.first().ifPresent(first -> {
            var was = new JsonObject();
            was.add("minutes", minutes(first.minutes()));
            was.addProperty("total", first.total().toPlainString());
            was.add("noLonger", texts(first.gone()));
            was.add("cameIn", texts(first.added()));
            json.add("firstPlan", was);
        });
    }

    private static void lists(JsonObject json, Plan plan) {
        json.add("parts", all(plan.parts().stream().map(line -> {
            var part = new JsonObject();
            part.addProperty("id", line.id());
            part.addProperty("quantity", line.quantity());
            part.addProperty("inKits", line.inKits());
            part.addProperty("onlyIfFound", line.isOnlyIfFound());
            part.addProperty("stock", line.stock());
            part.addProperty("leadMinutes", line.leadMinutes());
            return part;
        }).toList()));
        json.add("supplies", all(plan.supplies().stream().map(line -> {
            var supply = new JsonObject();
            supply.addProperty("id", line.id());
            supply.add("quantities", texts(line.quantities().stream().map(Object::toString).toList()));
            supply.addProperty("out", line.isOut());
            return supply;
        }).toList()));
        json.add("tools", texts(plan.tools().stream().map(line -> line.id()).toList()));
        json.add("missingTools", texts(plan.tools().stream().filter(line -> line.isMissing()).map(line -> line.id()).toList()));
        json.add("missingPeople", texts(plan.lacks()));
    }

    private static JsonObject item(PlanItem item) {
        var json = new JsonObject();
        json.addProperty("part", item.part().name());
        json.addProperty("id", item.id());
        json.addProperty("title", item.title());
        json.add("machineFirst", texts(item.change().stream().map(state -> state.getLiteral()).toList()));
        json.add("minutes", minutes(item.minutes()));
        json.addProperty("unattendedMinutes", PlanTimes.unattended(item));
        json.addProperty("people", item.people());
        json.addProperty("skill", item.skill().getLiteral());
        json.addProperty("again", item.isAgain());
        return json;
    }

    private static JsonObject price(Plan plan) {
        var json = new JsonObject();
        var price = plan.price();
        json.addProperty("currency", price.currency());
        json.add("labour", lines(price.labour()));
        json.add("parts", lines(price.parts()));
        json.add("supplies", lines(price.supplies()));
        json.addProperty("net", price.net().toPlainString());
        json.addProperty("tax", price.tax().toPlainString());
        json.addProperty("total", price.total().toPlainString());
        json.addProperty("totalBad", price.totalBad().toPlainString());
        json.addProperty("validUntil", price.validUntil().toString());
        json.add("flags", texts(price.flags()));
        return json;
    }

    private static JsonArray lines(List<PriceLine> lines) {
        return all(lines.stream().map(line -> {
            var json = new JsonObject();
            json.addProperty("what", line.what());
            json.addProperty("how", line.how());
            json.addProperty("amount", line.amount().toPlainString());
            return json;
        }).toList());
    }

    private static JsonObject minutes(Minutes minutes) {
        var json = new JsonObject();
        json.addProperty("usual", minutes.usual());
        json.addProperty("bad", minutes.bad());
        return json;
    }

    private static JsonArray texts(List<String> texts) {
        var array = new JsonArray();
        texts.forEach(array::add);
        return array;
    }

    private static JsonArray all(List<JsonObject> objects) {
        var array = new JsonArray();
        objects.forEach(array::add);
        return array;
    }
}
