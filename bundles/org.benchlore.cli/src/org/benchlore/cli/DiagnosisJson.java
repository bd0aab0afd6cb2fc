// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.Collection;
import java.util.function.Function;

import org.benchlore.diagnose.Assessment;
import org.benchlore.diagnose.Finding;
import org.benchlore.diagnose.FunctionChain;
import org.benchlore.diagnose.Move;
import org.benchlore.diagnose.Named;
import org.benchlore.diagnose.Near;
import org.benchlore.diagnose.NextCheck;
import org.benchlore.diagnose.Path;
import org.benchlore.diagnose.RankedCause;
import org.benchlore.diagnose.RuledOut;
import org.benchlore.diagnose.Witness;
import org.benchlore.diagnose.Words;
import org.benchlore.diagnose.ladder.Item;
import org.benchlore.diagnose.ladder.Ladder;
import org.benchlore.diagnose.ladder.Rung;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** An answer of 'diagnose' as JSON: chances are numbers from 0 to 1, times are minutes. */
final class DiagnosisJson {

    private static final double DIGITS = 1e4;

    private final Assessment answer;
    private final boolean invented;

    DiagnosisJson(Assessment answer, boolean invented) {
        this.answer = answer;
        this.invented = invented;
    }

    JsonObject json() {
        var json = named(answer.about());
        json.addProperty("invented", invented);
        json.add("findings", array(answer.findings(), this::finding));
        json.add("causes", array(answer.causes(), DiagnosisJson::cause));
        json.addProperty("others", answer.others());
        json.addProperty("elsewhere", round(answer.elsewhere()));
        json.add("together", array(answer.together(), DiagnosisJson::named));
        json.add("ruledOut", array(answer.ruledOut(), DiagnosisJson::ruledOut));
        json.add("checks", checks());
        answer.ladder().ifPresent(ladder -> json.add("ladder", ladder(ladder)));
        answer.chain().ifPresent(chain -> json.add("chain", chain(chain)));
        json.add("path", path(answer.path()));
        json.add("remarks", array(answer.remarks(), com.google.gson.JsonPrimitive::new));
        json.addProperty("caution", Assessment.CAUTION);
        return json;
    }

    private static <T> JsonArray array(Collection<T> all, Function<T, JsonElement> each) {
        var array = new JsonArray();
        all.stream().map(each).forEach(array::add);
        return array;
    }

    private static double round(double value) {
        return Math.round(value * DIGITS) / DIGITS;
    }

    private static JsonObject named(Named named) {
        var json = new JsonObject();
        json.addProperty("address", named.address().toString());
        json.addProperty("title", named.title());
        return json;
    }

    private JsonObject finding(Finding finding) {
        var json = new JsonObject();
        json.addProperty(finding.isCode() ? "code" : "symptom", finding.text());
        json.addProperty("label", finding.label());
        json.addProperty("known", !answer.unknown().contains(finding));
        json.add("nearest", array(answer.nearest().stream().filter(near -> near.finding().equals(finding)).toList(), DiagnosisJson::near));
        return json;
    }

    private static JsonObject near(Near near) {
        var json = new JsonObject();
        json.addProperty("words", near.words());
        json.add("causes", array(near.causes(), DiagnosisJson::named));
        return json;
    }

    private static JsonObject cause(RankedCause cause) {
        var json = named(new Named(cause.address(), cause.title()));
        json.add("component", named(cause.component()));
        json.addProperty("safetyCritical", cause.critical());
        json.addProperty("standing", Words.standing(cause.chance()));
        json.addProperty("chance", round(cause.chance()));
        json.addProperty("low", round(cause.low()));
        json.addProperty("high", round(cause.high()));
        json.addProperty("cases", cause.counted().events());
        json.addProperty("among", cause.counted().of());
        json.addProperty("onOtherMachinesOfFamily", cause.counted().relatives());
        json.addProperty("counted", Words.counted(cause.counted()));
        json.add("moves", array(cause.moves(), move -> move(cause, move)));
        json.add("witnesses", array(cause.witnesses(), DiagnosisJson::witness));
        json.add("broughtAboutBy", array(cause.broughtAboutBy(), DiagnosisJson::named));
        json.add("spoils", array(cause.spoils(), DiagnosisJson::named));
        json.add("cures", array(cause.cures(), DiagnosisJson::named));
        return json;
    }

    private static JsonObject move(RankedCause cause, Move move) {
        var json = new JsonObject();
        json.addProperty("by", move.by());
        json.addProperty("from", round(move.from()));
        json.addProperty("to", round(move.to()));
        json.addProperty("words", Words.move(cause, move));
        return json;
    }

    private static JsonObject witness(Witness witness) {
        var json = named(new Named(witness.address(), witness.title()));
        json.addProperty("kind", witness.kind().name());
        json.addProperty("says", witness.says());
        return json;
    }

    private static JsonObject ruledOut(RuledOut one) {
        var json = named(one.note());
        json.add("suspect", named(one.suspect()));
        json.addProperty("finding", one.finding());
        return json;
    }

    private JsonObject checks() {
        var checks = answer.checks();
        var json = new JsonObject();
        json.add("order", array(checks.order(), DiagnosisJson::check));
        json.addProperty("expectedMinutes", round(checks.expected()));
        json.addProperty("likeliestFirstMinutes", round(checks.likeliestFirst()));
        json.addProperty("shortestFirstMinutes", round(checks.shortestFirst()));
        return json;
    }

    private static JsonObject check(NextCheck check) {
        var json = named(check.procedure());
        json.addProperty("id", check.id());
        json.addProperty("text", check.text());
        json.addProperty("minutes", round(check.added()));
        json.addProperty("minutesAlone", round(check.alone()));
        json.addProperty("timeRecorded", check.timed());
        json.addProperty("finds", round(check.finds()));
        json.addProperty("safetyCritical", check.critical());
        json.add("opens", array(check.opens(), DiagnosisJson::named));
        json.add("results", array(check.results(), DiagnosisJson::result));
        return json;
    }

    private static JsonObject result(NextCheck.Result result) {
        var json = new JsonObject();
        json.addProperty("id", result.id());
        json.addProperty("answer", result.answer());
        json.add("points", array(result.points(), DiagnosisJson::named));
        json.add("against", array(result.against(), DiagnosisJson::named));
        return json;
    }

    private static JsonObject ladder(Ladder ladder) {
        var json = new JsonObject();
        json.add("work", named(ladder.work()));
        ladder.job().ifPresent(job -> json.add("job", named(job)));
        json.add("rungs", array(ladder.rungs(), DiagnosisJson::rung));
        ladder.next().ifPresent(item -> json.add("next", item(item)));
        json.add("killed", array(ladder.killed(), com.google.gson.JsonPrimitive::new));
        return json;
    }

    private static JsonObject rung(Rung rung) {
        var json = new JsonObject();
        json.addProperty("kind", rung.kind().name());
        json.add("items", array(rung.items(), DiagnosisJson::item));
        return json;
    }

    private static JsonObject item(Item item) {
        var json = new JsonObject();
        json.addProperty("state", item.state().name());
        json.addProperty("text", item.text());
        json.addProperty("detail", item.detail());
        json.addProperty("address", item.address().map(Object::toString).orElse(""));
        return json;
    }

    private static JsonObject chain(FunctionChain chain) {
        var json = named(chain.function());
        json.add("members", array(chain.members(), member -> {
            var one = named(member.component());
            one.addProperty("renewed", member.renewed());
            one.addProperty("when", member.when());
            one.add("knownCauses", array(member.causes(), DiagnosisJson::named));
            return one;
        }));
        return json;
    }

    private static JsonObject path(Path path) {
        var json = new JsonObject();
        json.add("steps", array(path.steps(), step -> {
            var one = named(step.check());
            one.addProperty("result", step.result());
            one.addProperty("fromRecord", step.recorded());
            return one;
        }));
        path.leading().ifPresent(leading -> json.add("leading", named(leading)));
        json.addProperty("found", path.isFound());
        json.addProperty("text", path.text());
        return json;
    }
}
