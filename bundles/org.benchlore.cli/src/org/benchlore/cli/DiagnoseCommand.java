// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.benchlore.diagnose.Assessment;
import org.benchlore.diagnose.Question;
import org.benchlore.diagnose.Question.Reply;
import org.benchlore.diagnose.QuestionException;
import org.benchlore.page.TextRenderer;
import org.benchlore.workshop.OpenLibrary;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Ranks causes, says what to check next, and builds the ladder after work that did not cure. */
@Command(name = "diagnose", mixinStandardHelpOptions = true, description = "Say what may be wrong, from a complaint and"
        + " codes: causes with what the shop has seen, what to check next, and what to look at when work did not cure it.")
final class DiagnoseCommand implements Callable<Integer> {

    private static final int WIDTH = 96;

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Parameters(index = "0", paramLabel = "MACHINE", description = "Id of a machine or a unit.")
    private String machine;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "COMPLAINT",
            description = "What was noticed, in words; codes may stand among them.")
    private List<String> complaint = new ArrayList<>();

    @Option(names = "--symptom", paramLabel = "T", description = "What was noticed; may be given several times.")
    private List<String> symptoms = new ArrayList<>();

    @Option(names = "--code", paramLabel = "C", description = "A fault code as shown; may be given several times.")
    private List<String> codes = new ArrayList<>();

    @Option(names = "--after", paramLabel = "PROCEDURE",
            description = "Work that was done and did not cure; of a unit its job record is read.")
    private String after;

    @Option(names = "--answer", paramLabel = "CHECK=RESULT",
            description = "What a check showed: id of a step, procedure or cause, and the outcome's id or words.")
    private List<String> answers = new ArrayList<>();

    DiagnoseCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        try (var open = desk.openAndRemark(library.folder())) {
            var answer = ask(open);
            if (library.isJson()) {
                desk.print(new DiagnosisJson(answer, open.isInvented()).json());
            } else {
                desk.out().println(new TextRenderer(WIDTH).render(open.diagnosisPages().of(answer)));
            }
            return answer.isKnown() || answer.ladder().isPresent() ? Exit.DONE : Exit.EMPTY;
        }
    }

    private Assessment ask(OpenLibrary open) throws BadArgument {
        try {
            return open.diagnoses().ask(new Question(machine, complaints(), codes, Optional.ofNullable(after), replies()));
        } catch (QuestionException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    private List<String> complaints() {
        var all = new ArrayList<>(symptoms);
        if (!complaint.isEmpty()) {
            all.add(0, String.join(" ", complaint));
        }
        return all;
    }

    private List<Reply> replies() throws BadArgument {
        var replies = new ArrayList<Reply>();
        for (var answer : answers) {
            int sign = answer.indexOf('=');
            if (sign <= 0 || sign == answer.length() - 1) {
                throw new BadArgument("'" + answer + "' is no answer: write CHECK=RESULT, such as step-dp7k=within");
            }
            replies.add(new Reply(answer.substring(0, sign).strip(), answer.substring(sign + 1).strip()));
        }
        return replies;
    }
}
