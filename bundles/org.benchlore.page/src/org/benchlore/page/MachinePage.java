// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.benchlore.model.Cause;
import org.benchlore.model.Component;
import org.benchlore.model.Function;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.YesNo;

/** The page of a machine: what it does, what it is made of, how that fails, and how it is opened. */
final class MachinePage implements KindPage {

    private final Machine machine;
    private final Scope scope;
    private final Links links;

    MachinePage(Machine machine, Scope scope) {
        this.machine = machine;
        this.scope = scope;
        this.links = scope.links();
    }

    @Override
    public void write(Sheet sheet) {
        facts(sheet);
        sheet.section("What it is", links.text(machine.getSummary(), machine));
        sheet.bullets(2, "What it does", machine.getFunctions().stream().map(this::function).toList());
        var tree = new ArrayList<List<Span>>();
        machine.getComponents().forEach(system -> tree(0, system, tree));
        sheet.bullets(2, "Components", tree);
        causes(sheet);
        new Accesses(scope).write(sheet, machine.getAccesses());
        sheet.picturesSection(machine.getMedia());
        new Referrers(scope).write(sheet);
    }

    private void facts(Sheet sheet) {
        sheet.facts(KindPage.facts(Kind.MACHINE, scope).add(Texts.MAKER, machine.getMaker())
                .add("Model", machine.getModel()).add("Family", machine.getFamily())
                .add("Variants", Spans.words(machine.getVariants()))
                .add("Built", Spans.range(machine.getYearFrom(), machine.getYearTo()))
                .add("Serial numbers", Spans.range(machine.getSerialFrom(), machine.getSerialTo()))
                .add("Value of a unit", scope.prices().amount(machine.getValueNow())));
    }

    private List<Span> function(Function function) {
        var chain = components().filter(it -> it.getFunctions().contains(function)).toList();
        return Spans.concat(List.of(Span.strong(Names.of(function))),
                Spans.before(": ", links.text(function.getText(), function)),
                Spans.before(chain.isEmpty() ? "" : " – its chain: ", links.joined(chain)));
    }

    private Stream<Component> components() {
        return machine.getComponents().stream().flatMap(MachinePage::withInner);
    }

    private static Stream<Component> withInner(Component component) {
        return Stream.concat(Stream.of(component), component.getComponents().stream().flatMap(MachinePage::withInner));
    }

    private void tree(int level, Component component, List<List<Span>> items) {
        items.add(Indent.by(level, component(component)));
        component.getComponents().forEach(inner -> tree(level + 1, inner, items));
    }

    private List<Span> component(Component component) {
        var danger = component.getSafetyCritical() == YesNo.YES ? "its failure can hurt somebody" : "";
        return Spans.join("; ", List.of(List.of(Span.strong(Names.of(component))),
                Spans.before("also called ", Spans.words(component.getNames())), Spans.of(danger),
                Spans.before("its failure ruins " + often(component), links.joined(component.getRuins())),
                Spans.before("parts: ", links.joined(component.getParts()))));
    }

    private static String tells(Cause cause) {
        var finds = cause.getCheckFinds() == null ? "" : "finds " + cause.getCheckFinds().toPlainString() + " of a hundred that have it";
        var blames = cause.getCheckBlames() == null ? "" : "blames " + cause.getCheckBlames().toPlainString()
                + " of a hundred that do not";
        return finds.isEmpty() || blames.isEmpty() ? finds + blames : finds + ", " + blames;
    }

    private static String often(Component component) {
        return component.getRuinsPercent() == null ? "" : "in " + component.getRuinsPercent().toPlainString() + " of a hundred ";
    }

    private void causes(Sheet sheet) {
        var rows = new Rows("How it fails", Texts.CAUSE, Texts.COMPONENT, "How often", "What is noticed", Texts.CODES,
                "Check", "Brought about by");
        components().forEach(component -> component.getCauses().forEach(cause -> rows.row(
                Spans.of(Names.of(cause)), Spans.of(Names.of(component)), Spans.of(Labels.of(cause.getFrequency())),
                Spans.words(cause.getSymptoms()), links.joined(cause.getCodes()),
                Spans.join(" – ", List.of(links.to(cause.getCheck()), links.text(cause.getCheckText(), cause),
                        Spans.of(tells(cause)))),
                links.joined(cause.getCausedBy()))));
        sheet.table(rows);
    }
}
