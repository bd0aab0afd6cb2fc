// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.page.Block;
import org.benchlore.page.Page;
import org.benchlore.page.Span;
import org.benchlore.search.Passage;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.ui.look.Words;

/** Makes the preview of a hit as a small page. */
final class PreviewPage {

    private final Row row;
    private final Passage passage;
    private final List<Row> related;
    private final Catalogue catalogue;
    private final List<Block> blocks = new ArrayList<>();

    PreviewPage(Row row, Passage passage, List<Row> related, Catalogue catalogue) {
        this.row = row;
        this.passage = passage;
        this.related = related;
        this.catalogue = catalogue;
    }

    Page page() {
        blocks.add(new Block.Heading(3, row.title()));
        say(HitLine.joined(Stream.of(Words.one(row.kind()), Words.state(row.status()), HitLine.machines(row, catalogue),
                row.date().map(LocalDate::toString).orElse(""))));
        if (row.kind() == Kind.PROCEDURE) {
            blocks.add(new Block.Paragraph(List.of(Span.strong(Messages.openForHazards))));
        }
        if (!passage.text().isBlank()) {
            blocks.add(new Block.Paragraph(marked()));
        }
        if (!passage.why().isEmpty()) {
            blocks.add(new Block.Bullets(passage.why().stream().map(why -> List.of(Span.of(why))).toList()));
        }
        addRelated();
        return new Page(row.title(), blocks);
    }

    private void say(String words) {
        blocks.add(new Block.Paragraph(List.of(Span.of(words))));
    }

    private List<Span> marked() {
        var spans = new ArrayList<Span>();
        int from = 0;
        for (var mark : passage.marks()) {
            if (mark.start() >= from && mark.end() > mark.start() && mark.end() <= passage.text().length()) {
                if (mark.start() > from) {
                    spans.add(Span.of(passage.text().substring(from, mark.start())));
                }
                spans.add(Span.strong(passage.text().substring(mark.start(), mark.end())));
                from = mark.end();
            }
        }
        spans.add(Span.of(passage.text().substring(from)));
        return spans;
    }

    private void addRelated() {
        if (!related.isEmpty()) {
            blocks.add(new Block.Heading(3, Messages.belongsToIt));
            blocks.add(new Block.Bullets(related.stream().map(PreviewPage::link).toList()));
        }
    }

    private static List<Span> link(Row other) {
        var facts = HitLine.joined(Stream.of(Words.one(other.kind()), Words.state(other.status())));
        return List.of(new Span.Link(other.title(), other.address()), Span.of("  " + facts));
    }
}
