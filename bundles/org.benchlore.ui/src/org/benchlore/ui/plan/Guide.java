// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Machine;
import org.benchlore.page.Block;
import org.benchlore.page.Labels;
import org.benchlore.page.Page;
import org.benchlore.page.Span;
import org.benchlore.plan.search.PlanException;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.osgi.util.NLS;

/** Says what to do while there is no plan, and why there is none, with links to what stands in the way. */
final class Guide {

    private final Optional<OpenLibrary> opened;

    Guide(Optional<OpenLibrary> opened) {
        this.opened = opened;
    }

    Page noLibrary() {
        return page(Messages.noPlanTitle, words(Messages.noLibrary));
    }

    Page toDo(Optional<String> subject, boolean isWithoutAccesses) {
        if (subject.isEmpty()) {
            return page(Messages.noPlanTitle, Stream.of(Messages.pickSubject, Messages.pickWork, Messages.pickState)
                    .flatMap(this::words));
        }
        return page(NLS.bind(Messages.planFor, subject.get()), Stream.concat(words(Messages.pickWork),
                words(isWithoutAccesses ? Messages.noAccessesBefore : Messages.pickState)));
    }

    Page noAccesses(String subject) {
        return page(NLS.bind(Messages.accessesOf, subject), words(Messages.noAccesses));
    }

    /** The sentence, with titles for ids, and links to what it names. */
    Page refusal(PlanException refused, Optional<Machine> machine) {
        var sentence = refused.getMessage().endsWith(".") ? refused.getMessage() : refused.getMessage() + ".";
        var links = new ArrayList<List<Span>>();
        for (var id : refused.elements().stream().distinct().toList()) {
            var link = link(id, machine);
            sentence = link.isPresent() ? titled(sentence, id, link.get().text()) : sentence;
            link.ifPresent(found -> links.add(List.of(found)));
        }
        var strong = new Block.Paragraph(List.of(Span.strong(sentence)));
        return page(Messages.refusedTitle,
                links.isEmpty() ? Stream.of(strong) : Stream.of(strong, new Block.Bullets(links)));
    }

    private static String titled(String sentence, String id, String title) {
        return sentence.replaceAll("(?<![\\w-])'?" + Pattern.quote(id) + "'?(?![\\w-])",
                Matcher.quoteReplacement("'" + title + "'"));
    }

    private Optional<Span.Link> link(String id, Optional<Machine> machine) {
        var library = opened.orElseThrow().library();
        return library.catalogue().byId(id).map(row -> new Span.Link(row.title(), row.address()))
                .or(() -> machine.stream().flatMap(it -> it.getAccesses().stream())
                        .filter(access -> access.getId().equals(id)).findFirst()
                        .flatMap(access -> library.addressOf(access).map(Address::path))
                        .map(path -> new Span.Link(access(machine, id), new Address(path, id))));
    }

    private static String access(Optional<Machine> machine, String id) {
        return machine.stream().flatMap(it -> it.getAccesses().stream()).filter(access -> access.getId().equals(id))
                .map(access -> access.getTitle() == null ? id : access.getTitle()).findFirst().orElse(id);
    }

    private Stream<Block> words(String sentence) {
        return Stream.of(new Block.Paragraph(List.of(Span.of(sentence))));
    }

    private Page page(String title, Stream<? extends Block> rest) {
        var blocks = new ArrayList<Block>(List.of(new Block.Heading(1, title)));
        if (opened.filter(OpenLibrary::isInvented).isPresent()) {
            blocks.add(new Block.Banner(Block.Tone.INVENTED, Labels.INVENTED));
        }
        rest.forEach(blocks::add);
        return new Page(title, List.copyOf(blocks));
    }
}
