// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.benchlore.page.AddingPage;
import org.benchlore.page.HtmlRenderer;
import org.benchlore.page.TextRenderer;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says what is worth adding while a machine is open. */
@Command(name = "adding", description = "What is worth adding while it is open: extra if done now, if it must come apart again,"
        + " how often it was seen.", mixinStandardHelpOptions = true, footer = {"", "  adding lorry-17 renew-pto-clutch-pack",
            "  adding lorry-21 renew-pto-clutch-pack --keep 3 --assume renew-pto-actuator:day-out=350"})
final class AddingCommand implements Callable<Integer> {

    private static final int WIDTH = 110;

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Mixin
    private AddingTask task;

    @Option(names = "--page", paramLabel = "FILE", description = "Write it with its drawings to a new HTML file.")
    private Path file;

    AddingCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        try (var opened = desk.openAndRemark(library.folder())) {
            var adding = task.adding(opened);
            if (library.isJson()) {
                desk.print(new AddingJson().of(adding));
            } else {
                desk.out().println(new TextRenderer(WIDTH).render(AddingPage.of(adding)));
            }
            NewFile.write(file, () -> new HtmlRenderer().render(AddingPage.of(adding)));
            return adding.proposals().isEmpty() ? Exit.EMPTY : Exit.DONE;
        }
    }
}
