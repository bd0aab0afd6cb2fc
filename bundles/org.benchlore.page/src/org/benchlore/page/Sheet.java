// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import org.benchlore.model.Media;
import org.benchlore.page.Block.Banner;
import org.benchlore.page.Block.Bullets;
import org.benchlore.page.Block.HazardPanel;
import org.benchlore.page.Block.Heading;
import org.benchlore.page.Block.Pairs;
import org.benchlore.page.Block.Paragraph;
import org.benchlore.page.Block.Picture;
import org.benchlore.page.Block.Tone;

/** A page being written, from top to bottom. What is empty leaves no heading behind. */
final class Sheet {

    /** A torque that somebody wrote into a text is believed like one in a table. */
    private static final Pattern TORQUE = Pattern.compile("[0-9]\\s?N\\s?[·.*]?\\s?m\\b", Pattern.CASE_INSENSITIVE);

    private final List<Block> blocks = new ArrayList<>();
    private boolean dangerous;

    void add(Block block) {
        blocks.add(block);
        dangerous |= block instanceof HazardPanel;
    }

    void heading(int level, String text) {
        add(new Heading(level, text));
    }

    void banner(Tone tone, String text) {
        add(new Banner(tone, text));
    }

    void paragraph(List<Span> spans) {
        if (!spans.isEmpty()) {
            add(new Paragraph(spans));
            dangerous |= TORQUE.matcher(Spans.text(spans)).find();
        }
    }

    /** Writes a paragraph that begins with its label. */
    void labelled(String label, List<Span> spans) {
        if (!spans.isEmpty()) {
            add(new Paragraph(Spans.concat(List.of(Span.strong(label + ": ")), spans)));
        }
    }

    void section(String title, List<Span> spans) {
        if (!spans.isEmpty()) {
            heading(2, title);
            paragraph(spans);
        }
    }

    void bullets(int level, String title, List<List<Span>> items) {
        var written = items.stream().filter(item -> !item.isEmpty()).toList();
        if (!written.isEmpty()) {
            heading(level, title);
            add(new Bullets(written));
        }
    }

    void bullets(List<List<Span>> items) {
        if (!items.isEmpty()) {
            add(new Bullets(List.copyOf(items)));
        }
    }

    void facts(Facts facts) {
        if (!facts.pairs().isEmpty()) {
            add(new Pairs(facts.pairs()));
        }
    }

    void table(Rows rows) {
        rows.table().ifPresent(this::add);
    }

    void pictures(List<Media> media) {
        media.stream().filter(one -> one.getFile() != null)
                .forEach(one -> add(new Picture(one.getFile(), one.getCaption() == null ? "" : one.getCaption())));
    }

    void picturesSection(List<Media> media) {
        if (media.stream().anyMatch(one -> one.getFile() != null)) {
            heading(2, Texts.PICTURES);
            pictures(media);
        }
    }

    /** Notes that something on this page can hurt someone if it is wrong. */
    void markDangerous() {
        dangerous = true;
    }

    boolean isDangerous() {
        return dangerous;
    }

    List<Block> blocks() {
        return List.copyOf(blocks);
    }
}
