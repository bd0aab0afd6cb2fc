// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.benchlore.model.Access;
import org.benchlore.model.Work;

/** Writes how a machine is opened and closed: first all accesses at a glance, then the work of each. */
final class Accesses {

    private final Scope scope;
    private final Links links;

    Accesses(Scope scope) {
        this.scope = scope;
        this.links = scope.links();
    }

    void write(Sheet sheet, List<Access> accesses) {
        if (accesses.isEmpty()) {
            return;
        }
        sheet.heading(2, "How it is opened");
        var rows = new Rows("Accesses", "Access", "Needs", "Gives too", "Not with", "Strip", "Refit");
        accesses.forEach(access -> rows.row(Spans.of(Names.of(access)), links.needs(access.getNeeds()),
                links.joined(access.getCovers()), links.joined(access.getNotWith()), time(access.getStrip()),
                time(access.getRefit())));
        sheet.table(rows);
        accesses.forEach(access -> access(sheet, access));
        new Fastenings(links).table(sheet, accesses.stream()
                .flatMap(access -> Stream.of(access.getStrip(), access.getRefit())).filter(Objects::nonNull)
                .toList());
    }

    private static List<Span> time(Work work) {
        return work == null ? List.of() : Spans.of(Spans.range(work.getMinutesUsual(), work.getMinutesBad()));
    }

    private void access(Sheet sheet, Access access) {
        sheet.heading(2, "Access: " + Names.of(access));
        sheet.facts(new Facts().add(Texts.COMPONENT, links.to(access.getComponent()))
                .add("Needs", links.needs(access.getNeeds()))
                .add("Not with", Spans.join(" – ", List.of(links.joined(access.getNotWith()),
                        links.text(access.getNotWithWhy(), access))))
                .add("After closing", links.joined(access.getAfterClosing())));
        work(sheet, "Strip", access.getStrip());
        work(sheet, "Refit", access.getRefit());
    }

    private void work(Sheet sheet, String label, Work work) {
        if (work == null) {
            sheet.labelled(label, Spans.of(Texts.NOT_RECORDED));
            return;
        }
        sheet.heading(3, label + ": " + Names.of(work));
        var works = new Works(scope, 4);
        var facts = new Facts();
        works.facts(facts, work);
        sheet.facts(facts);
        works.write(sheet, work);
    }
}
