// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.Optional;
import java.util.concurrent.Callable;

import org.benchlore.model.Address;
import org.benchlore.model.TopElement;
import org.benchlore.page.TextRenderer;
import org.benchlore.store.UnknownId;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.emf.ecore.util.EcoreUtil;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows one element. */
@Command(name = "show", description = "Show one element by its id.", mixinStandardHelpOptions = true)
final class ShowCommand implements Callable<Integer> {

    private static final int WIDTH = 96;

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Parameters(paramLabel = "ID", description = "Id of the element, or file#id.")
    private String id;

    ShowCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        try (var open = desk.openAndRemark(library.folder())) {
            var element = element(open);
            if (library.isJson()) {
                desk.print(new ElementJson(open.library()).of(element));
            } else {
                desk.out().println(new TextRenderer(WIDTH).render(open.pages().of(element)));
            }
            return Exit.DONE;
        }
    }

    private TopElement element(OpenLibrary open) throws BadArgument {
        return find(open).orElseThrow(() -> new BadArgument(
                new UnknownId(open.library().catalogue()).says(id, "element")));
    }

    /** Takes an id or an address; of an inner element, the element that holds it is shown. */
    private Optional<TopElement> find(OpenLibrary open) throws BadArgument {
        if (!id.contains("#")) {
            return open.library().top(id);
        }
        try {
            return open.library().element(Address.parse(id)).map(EcoreUtil::getRootContainer)
                    .map(TopElement.class::cast);
        } catch (IllegalArgumentException e) {
            throw new BadArgument(e.getMessage());
        }
    }
}
