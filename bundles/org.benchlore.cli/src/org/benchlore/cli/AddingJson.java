// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;

import org.benchlore.evidence.Counts;
import org.benchlore.evidence.Findings;
import org.benchlore.evidence.Prior;
import org.benchlore.evidence.decide.DecisionWords;
import org.benchlore.evidence.decide.Option;
import org.benchlore.evidence.decide.Verdict;
import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Assumptions;
import org.benchlore.plan.adding.Proposal;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** Writes what may be worth adding as JSON, with every figure behind the words: money as text, minutes as numbers. */
final class AddingJson {

    JsonObject of(Adding adding) {
        var json = new JsonObject();
        json.addProperty("machine", adding.machine().getId());
        adding.unit().ifPresent(unit -> json.addProperty("unit", unit.getId()));
        json.addProperty("invented", adding.machine().isInvented());
        json.add("procedures", texts(adding.request().procedures()));
        json.add("open", texts(adding.request().open()));
        json.add("done", texts(adding.request().done()));
        adding.keptUntil().ifPresent(day -> json.addProperty("keptUntil", day.toString()));
        json.addProperty("currency", adding.currency());
        adding.plan().ifPresent(plan -> json.add("plan", new PlanJson().of(plan)));
        var proposals = new JsonArray();
        adding.proposals().forEach(one -> proposals.add(proposal(one, adding.surePercent())));
        json.add("proposals", proposals);
        shared(json, adding);
        json.add("remarks", texts(adding.remarks()));
        return json;
    }

    private static JsonObject proposal(Proposal one, double surePercent) {
        var json = new JsonObject();
        json.addProperty("id", one.id());
        json.addProperty("title", one.title());
        json.addProperty("component", one.component());
        json.add("notes", texts(one.notes()));
        json.add("reasons", texts(one.reasons().stream().map(Enum::name).toList()));
        json.add("benefits", texts(one.benefits().stream().sorted().map(Enum::name).toList()));
        json.addProperty("basis", one.basis().name());
        json.addProperty("extraMinutes", one.extra());
        json.addProperty("apartMinutes", one.apart());
        var openings = new JsonObject();
        one.openings().forEach((id, price) -> openings.addProperty(id, price.toPlainString()));
        json.add("furtherOpenings", openings);
        json.add("seen", seen(one, surePercent));
        json.add("figures", figures(one.assumptions()));
        var decision = one.decision();
        json.add("customer", verdict(decision.customer()));
        decision.shop().ifPresent(own -> json.add("shop", verdict(own)));
        json.add("words", texts(DecisionWords.lines(decision, one.known().words())));
        return json;
    }

    private static JsonObject seen(Proposal one, double surePercent) {
        var json = new JsonObject();
        json.addProperty("words", one.known().words());
        json.addProperty("known", one.known().isKnown());
        one.known().oldPart().ifPresent(part -> json.addProperty("partInPlace", part.id()));
        one.known().newPart().ifPresent(part -> json.addProperty("partToFit", part.id()));
        json.add("leftIn", findings(one.known().findings(), surePercent));
        one.known().before().ifPresent(it -> json.add("leftInNumberBefore", findings(it, surePercent)));
        json.add("notCounted", texts(one.known().passedOver()));
        return json;
    }

    private static JsonObject findings(Findings findings, double surePercent) {
        var json = new JsonObject();
        if (findings.prior() instanceof Prior.Tally tally) {
            json.addProperty("note", tally.note().id());
            json.addProperty("noteCount", tally.count());
            json.addProperty("noteOfAbout", tally.ofAbout());
        }
        json.add("jobs", counts(findings.left()));
        json.add("renewals", counts(findings.renewed()));
        json.addProperty("weightFailed", findings.comeback().failed());
        json.addProperty("weightHeld", findings.comeback().sound());
        if (findings.isKnown()) {
            var band = findings.comeback().band(surePercent);
            json.addProperty("share", findings.comeback().chance());
            json.addProperty("shareFrom", band.low());
            json.addProperty("shareTo", band.high());
        }
        json.addProperty("shareRenewingBringsTrouble", findings.trouble().chance());
        return json;
    }

    private static JsonObject counts(Counts counts) {
        var json = new JsonObject();
        json.addProperty("failed", counts.failed());
        json.addProperty("of", counts.of());
        json.addProperty("notFollowed", counts.notFollowed());
        json.addProperty("inNote", counts.inTally());
        json.addProperty("otherNumber", counts.otherNumber());
        json.addProperty("numberUnknown", counts.numberUnknown());
        return json;
    }

    private static JsonObject figures(Assumptions assumptions) {
        var json = new JsonObject();
        assumptions.figures().forEach((figure, assumed) -> {
            var one = new JsonObject();
            one.addProperty("value", assumed.value().toPlainString());
            one.addProperty("from", assumed.from());
            one.addProperty("byHand", assumed.byHand());
            json.add(figure.word(), one);
        });
        return json;
    }

    private static JsonObject verdict(Verdict verdict) {
        var json = new JsonObject();
        json.addProperty("extra", verdict.sum().extra().toPlainString());
        json.addProperty("apartLater", verdict.sum().apartLater().toPlainString());
        verdict.breakEven().ifPresent(from -> json.addProperty("paysFrom", from));
        json.addProperty("pays", verdict.pays());
        json.addProperty("sure", verdict.sure());
        var costs = new JsonObject();
        verdict.costs().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(entry ->
                costs.addProperty(word(entry.getKey()), entry.getValue().toPlainString()));
        json.add("ways", costs);
        json.addProperty("least", verdict.costs().isEmpty() ? "" : word(verdict.least()));
        return json;
    }

    private static String word(Option option) {
        return option.name().toLowerCase(Locale.ROOT);
    }

    private static void shared(JsonObject json, Adding adding) {
        var pairs = new JsonArray();
        adding.pairs().forEach(pair -> {
            var one = new JsonObject();
            one.add("both", texts(java.util.List.of(pair.first(), pair.second())));
            one.add("openings", texts(pair.openings()));
            one.addProperty("extraBoth", pair.extraBoth().toPlainString());
            one.addProperty("extraEach", pair.extraEach().toPlainString());
            pairs.add(one);
        });
        json.add("pairs", pairs);
        adding.together().ifPresent(it -> {
            var one = new JsonObject();
            one.add("chosen", texts(it.chosen()));
            one.add("openings", texts(it.openings()));
            one.addProperty("gain", it.gain().toPlainString());
            json.add("together", one);
        });
    }

    private static JsonArray texts(Collection<String> texts) {
        var array = new JsonArray();
        texts.forEach(array::add);
        return array;
    }
}
