// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.Media;
import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.Way;
import org.benchlore.model.Work;
import org.benchlore.page.Labels;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.store.TextReferences;

/**
 * The page of a learner's way: the procedures in the order in which they are learned, how far one has come with each, what
 * may not be done alone, why things are done as they are, pictures, questions to be asked back, and a job that went wrong.
 */
public final class LearnerPage {

    private static final int MOST_NOTES = 3;
    private static final String[][] LEVELS = {{"WATCHED", "Watched"}, {"DONE_WITH", "Done with somebody"}, {"DONE_ALONE", "Done alone"}};

    private final Library library;
    private final Optional<Story> story;
    private final LearningOrder order;
    private final Questions questions;
    private final Alone alone;

    /**
     * Makes the page.
     *
     * @param library the packed library
     * @param story a job that went wrong, if there is one
     */
    public LearnerPage(Library library, Optional<Story> story) {
        this.library = library;
        this.story = story;
        this.order = new LearningOrder(library);
        this.questions = new Questions(library);
        this.alone = new Alone(library);
    }

    /**
     * Returns the order in which the procedures are learned.
     *
     * @return ids of every procedure of the packed library
     */
    public List<String> order() {
        return order.order().stream().map(Procedure::getId).toList();
    }

    /**
     * Writes the body of the page.
     *
     * @param title what people call the pack
     * @param isInvented whether it holds invented data
     * @return HTML to stand in a page
     */
    public String body(String title, boolean isInvented) {
        var html = new StringBuilder("<h1>Learner's way: " + escape(title) + "</h1>\n");
        if (isInvented) {
            html.append("<p class=\"banner invented\">").append(Labels.INVENTED).append("</p>\n");
        }
        html.append("""
                <p>In this order: what others need comes first, then what lies nearest, then what asks for the least skill. For each task
                somebody who knows it stands by and signs with initials. Nothing that says 'not alone' is done alone before that person
                has signed; local rules and a licensed person decide.</p>
                <div class="tools"><label>Learner <input type="text" data-keep="learner" autocomplete="off"></label>
                <button type="button" data-do="print" hidden>Print</button>
                <button type="button" data-do="progress" hidden>Save my progress as a file</button>
                <button type="button" data-do="clear" hidden>Clear my ticks</button></div>
                <p class="screen-only">Ticks stay on this device. The progress file goes to whoever keeps the shop's book, where
                'Take In a Pack' in the menu File or the command take brings it in. <strong class="not-kept" hidden>This browser keeps nothing for this page: save the file or
                print the page before you close it.</strong></p>
                <p class="paper-only">Hand this sheet back to whoever keeps the shop's book.</p>
                <h2>Tasks</h2>
                """);
        int number = 0;
        for (var procedure : order.order()) {
            task(html, ++number, procedure);
        }
        story.ifPresent(it -> story(html, it));
        return html.toString();
    }

    private void task(StringBuilder html, int number, Procedure procedure) {
        var id = escape(procedure.getId());
        html.append("<section class=\"task\" aria-labelledby=\"task-").append(id).append("\">\n<h3 id=\"task-").append(id).append("\">")
                .append(number).append(". <a href=\"pages/").append(id).append(".html\">").append(escape(title(procedure))).append("</a></h3>\n");
        facts(html, procedure);
        alone(html, procedure);
        levels(html, id);
        whys(html, procedure);
        pictures(html, procedure);
        ask(html, procedure);
        html.append("</section>\n");
    }

    private void facts(StringBuilder html, Procedure procedure) {
        var first = order.needed(procedure).stream().flatMap(id -> library.catalogue().byId(id).stream()).map(Row::title).toList();
        int depth = order.depth(procedure);
        html.append("<p>Skill: ").append(escape(Labels.of(procedure.getSkill()))).append(". ")
                .append(depth == 0 ? "Nothing to open." : depth == 1 ? "One access to open." : depth + " accesses to open, one behind the other.");
        if (!first.isEmpty()) {
            html.append(" Know first: ").append(escape(String.join("; ", first))).append('.');
        }
        html.append("</p>\n");
    }

    private void alone(StringBuilder html, Procedure procedure) {
        var reasons = alone.reasons(procedure);
        if (!reasons.isEmpty()) {
            html.append("<p class=\"banner attention\">Not alone: ").append(escape(String.join("; ", reasons))).append(".</p>\n");
        }
    }

    private static void levels(StringBuilder html, String id) {
        html.append("<fieldset data-task=\"").append(id).append("\"><legend>How far</legend>\n<div class=\"level\">\n");
        for (var level : LEVELS) {
            html.append("<label><input type=\"radio\" name=\"").append(id).append("\" value=\"").append(level[0]).append("\" data-keep=\"")
                    .append(id).append(":level\">").append(level[1]).append("</label>\n");
        }
        html.append("<label>On <input type=\"text\" class=\"on\" placeholder=\"2026-11-25\" maxlength=\"10\" autocomplete=\"off\" data-keep=\"").append(id)
                .append(":on\"></label>\n<label>Mentor's initials <input type=\"text\" class=\"by\" maxlength=\"8\" autocomplete=\"off\" data-keep=\"")
                .append(id).append(":by\"></label>\n</div></fieldset>\n");
    }

    private void whys(StringBuilder html, Procedure procedure) {
        var lines = new ArrayList<String>();
        steps(procedure).stream().filter(step -> step.getWhy() != null && !step.getWhy().isBlank()).forEach(step -> lines.add(
                "<li>Step " + number(step) + ": " + escape(plain(step.getWhy())) + "</li>\n"));
        library.catalogue().referringTo(Kind.PROCEDURE.path(procedure.getId())).filter(row -> row.kind() == Kind.NOTE)
                .sorted(java.util.Comparator.comparing((Row row) -> !row.status().equals("HELD")).thenComparing(Row::title)).limit(MOST_NOTES)
                .forEach(row -> library.top(row.id()).map(FieldNote.class::cast).ifPresent(note -> lines.add("<li>From the shop's notes: <a href=\"pages/"
                        + escape(row.id()) + ".html\">" + escape(row.title()) + "</a>" + found(note) + "</li>\n")));
        if (!lines.isEmpty()) {
            html.append("<h4>Why, and where the traps are</h4>\n<ul>\n").append(String.join("", lines)).append("</ul>\n");
        }
    }

    private String found(FieldNote note) {
        var text = plain(note.getFinding() == null ? "" : note.getFinding());
        return text.isBlank() ? "" : ". " + escape(text);
    }

    private void pictures(StringBuilder html, Procedure procedure) {
        var media = new ArrayList<Media>(procedure.getMedia());
        steps(procedure).forEach(step -> media.addAll(step.getMedia()));
        var shown = media.stream().filter(one -> one.getFile() != null).toList();
        if (!shown.isEmpty()) {
            html.append("<h4>What it looks like</h4>\n<div class=\"pictures\">\n");
            shown.forEach(one -> {
                var caption = escape(one.getCaption() == null || one.getCaption().isBlank() ? one.getFile() : one.getCaption());
                html.append("<figure><img src=\"media/").append(escape(one.getFile())).append("\" alt=\"").append(caption)
                        .append("\"><figcaption>").append(caption).append("</figcaption></figure>\n");
            });
            html.append("</div>\n");
        }
    }

    private void ask(StringBuilder html, Procedure procedure) {
        var asked = questions.of(procedure);
        if (asked.isEmpty()) {
            return;
        }
        html.append("<h4>Asked back</h4>\n");
        asked.forEach(one -> html.append("<details><summary>").append(escape(one.question())).append("</summary><p>")
                .append(escape(one.answer())).append("</p></details>\n"));
        if (asked.size() < Questions.MOST) {
            html.append("<p class=\"kind\">The procedure says too little for more questions.</p>\n");
        }
    }

    private static void story(StringBuilder html, Story story) {
        html.append("<h2>A job that went wrong").append(story.when().isEmpty() ? "" : " (" + escape(story.when()) + ")").append("</h2>\n")
                .append(story.complaint().isEmpty() ? "" : "<p><strong>The complaint:</strong> " + escape(story.complaint()) + "</p>\n")
                .append("<ol>\n");
        story.rounds().forEach(round -> html.append("<li>").append(escape(round)).append("</li>\n"));
        html.append("</ol>\n");
        html.append(story.finding().isEmpty() ? "" : "<p><strong>What it was:</strong> " + escape(story.finding()) + "</p>\n");
        html.append(story.proof().isEmpty() ? "" : "<p><strong>How that was proved:</strong> " + escape(story.proof()) + "</p>\n");
    }

    private static List<Step> steps(Procedure procedure) {
        return procedure.getWays().stream().map(Way::getWork).filter(Objects::nonNull).flatMap(work -> work.getSteps().stream()).toList();
    }

    private static int number(Step step) {
        return ((Work) step.eContainer()).getSteps().indexOf(step) + 1;
    }

    private static String title(Procedure procedure) {
        return procedure.getTitle() == null || procedure.getTitle().isBlank() ? procedure.getId() : procedure.getTitle();
    }

    private String plain(String text) {
        return TextReferences.plain(text, library.catalogue()).strip();
    }

    private static String escape(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replace("'", "&#39;");
    }
}
