// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.model.Addition;
import org.benchlore.model.Address;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.Part;
import org.benchlore.model.Procedure;
import org.benchlore.model.Sighting;
import org.benchlore.model.Tally;
import org.benchlore.store.Row;

/** The page of a field note: how far it is proved, what was learned, and what is worth adding while it is open. */
final class NotePage implements KindPage {

    private final FieldNote note;
    private final Scope scope;
    private final Links links;

    NotePage(FieldNote note, Scope scope) {
        this.note = note;
        this.scope = scope;
        this.links = scope.links();
    }

    @Override
    public void write(Sheet sheet) {
        sheet.labelled(Texts.STATUS, Spans.of(Labels.of(note.getStatus())));
        sheet.paragraph(links.text(note.getText(), note));
        facts(sheet);
        sheet.bullets(2, Texts.CODES, links.codes(note.getCodes(), note.getCodesAsWritten()));
        sheet.bullets(2, Texts.SYMPTOMS, note.getSymptoms().stream().map(Spans::of).toList());
        sheet.section(Texts.FINDING, links.text(note.getFinding(), note));
        sheet.section("What was done", links.text(note.getAction(), note));
        sheet.section(Texts.VERIFICATION, links.text(note.getVerification(), note));
        if (note.getSeen() != null) {
            seen(sheet, note.getSeen());
        }
        additions(sheet);
        sheet.bullets(2, "Documents", links.each(note.getDocuments()));
        sheet.bullets(2, "Procedures", links.each(procedures()));
        sheet.picturesSection(note.getMedia());
        sameCause(sheet);
        new Referrers(scope).write(sheet);
    }

    private void facts(Sheet sheet) {
        sheet.facts(KindPage.facts(Kind.NOTE, scope).add(Texts.DATE, note.getDate())
                .add("Author", links.to(note.getAuthor())).add(Texts.MACHINE, links.to(note.getMachine()))
                .add(Texts.UNIT, links.to(note.getUnit())).add(Texts.METER, note.getMeter())
                .add(Texts.COMPONENT, links.to(note.getComponent())).add(Texts.CAUSE, links.to(note.getCause()))
                .add("During", links.joined(note.getDuring())).add("Job record", links.to(note.getJob())));
    }

    private void seen(Sheet sheet, Tally tally) {
        sheet.heading(2, Labels.capital(tally(tally)));
        sheet.bullets(tally.getSightings().stream().map(this::sighting).filter(item -> !item.isEmpty()).toList());
    }

    /** Returns 'seen 3 of about 40 since 2021'. */
    private static String tally(Tally tally) {
        var times = tally.getCount() == null ? "seen" : "seen " + tally.getCount();
        var among = tally.getOfAbout() == null ? tally.getCount() == null ? "" : " times"
                : " of about " + tally.getOfAbout();
        return times + among + (tally.getSince() == null ? "" : " since " + tally.getSince());
    }

    private List<Span> sighting(Sighting sighting) {
        return Spans.join(", ", List.of(Spans.of(sighting.getDate()), links.to(sighting.getUnit()),
                links.to(sighting.getBy())));
    }

    private void additions(Sheet sheet) {
        var rows = new Rows("Worth adding while it is open", "This work", "While doing", "Extra if done now",
                "If it must come apart again", Texts.PART, Texts.PRICE);
        note.getAddWhileDoing().forEach(addition -> addition(rows, addition));
        sheet.table(rows);
    }

    private void addition(Rows rows, Addition addition) {
        var work = Spans.join(": ", List.of(links.to(addition.getWork()), Spans.of(addition.getWorkText())));
        rows.row(work.isEmpty() ? Spans.of(Texts.NOT_RECORDED) : work, links.to(addition.getWhileDoing()),
                Spans.of(addition.getExtra()), Spans.of(addition.getAlone()), links.to(addition.getPart()),
                Spans.of(price(addition)));
    }

    private String price(Addition addition) {
        var ofPart = links.follow(addition.getPart(), Part.class)
                .map(part -> scope.prices().price(part.getPrice(), part.getPriceOn())).orElse("");
        return ofPart.isEmpty() ? scope.prices().amount(addition.getPartPrice()) : ofPart;
    }

    private List<Procedure> procedures() {
        var all = new ArrayList<Procedure>();
        all.addAll(note.getDuring());
        for (var addition : note.getAddWhileDoing()) {
            all.add(addition.getWork());
            all.add(addition.getWhileDoing());
        }
        var seen = new HashSet<Optional<Address>>();
        return all.stream().filter(Objects::nonNull).filter(it -> seen.add(links.address(it))).toList();
    }

    private void sameCause(Sheet sheet) {
        var cause = Optional.ofNullable(note.getCause()).flatMap(links::address);
        var own = links.address(note);
        var others = cause.isEmpty() ? Stream.<Row>empty() : scope.library().catalogue().rows(Kind.NOTE)
                .filter(row -> row.cause().equals(cause) && !own.equals(Optional.of(row.address())));
        new Referrers(scope).notes(sheet, "Field notes on the same cause", others);
    }
}
