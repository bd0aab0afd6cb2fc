// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.List;
import java.util.Map;

import org.benchlore.model.Address;
import org.benchlore.plan.card.Standing;
import org.benchlore.ui.Failures;
import org.benchlore.ui.plan.PlanView;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;

/** From a job to what helps with it, filled with where the machine stands by its record. */
final class LeadOn {

    private static final String ADDING = "org.benchlore.ui.adding.this";
    private static final String DIAGNOSE = "org.benchlore.ui.diagnose.show";
    private static final String NOTE = "org.benchlore.ui.note.write";

    private final Tools tools;

    LeadOn(Tools tools) {
        this.tools = tools;
    }

    /** Work that the last planned round is for and that is not done yet. */
    List<Address> unfinished() {
        var rounds = tools.job().getRounds();
        var done = Standing.before(tools.library(), tools.job(), rounds.size()).done();
        return rounds.stream().filter(round -> !round.getPlanned().isEmpty()).reduce((first, second) -> second).stream()
                .flatMap(round -> round.getPlanned().stream()).flatMap(it -> tools.address(it).stream())
                .filter(address -> !done.contains(address.id())).toList();
    }

    void plan() {
        var unit = tools.address(tools.job().getUnit());
        if (unit.isEmpty()) {
            tools.said().accept(Messages.unitFirst);
            return;
        }
        var now = Standing.now(tools.library(), tools.job());
        try {
            PlanView.show(tools.site().getPage()).take(unit.get().id(), unfinished().stream().map(Address::id).toList(), now.open(),
                    now.done());
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
    }

    void diagnose() {
        execute(DIAGNOSE);
    }

    void note() {
        execute(NOTE);
    }

    private void execute(String command) {
        try {
            tools.site().getService(IHandlerService.class).executeCommand(command, null);
        } catch (CommandException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
    }

    /** Whether there is a view for what is worth adding. */
    boolean canAdd() {
        return tools.site().getService(ICommandService.class).getCommand(ADDING).isDefined();
    }

    void adding() {
        var unit = tools.address(tools.job().getUnit());
        if (unit.isEmpty()) {
            tools.said().accept(Messages.unitFirst);
            return;
        }
        var now = Standing.now(tools.library(), tools.job());
        var command = tools.site().getService(ICommandService.class).getCommand(ADDING);
        var filled = ParameterizedCommand.generateCommand(command, Map.of("unit", unit.get().id(),
                "procedures", String.join(",", unfinished().stream().map(Address::id).toList()),
                "open", String.join(",", now.open()), "job", tools.job().getId()));
        try {
            if (filled != null) {
                tools.site().getService(IHandlerService.class).executeCommand(filled, null);
            }
        } catch (CommandException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
    }
}
