// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.concurrent.Callable;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import org.benchlore.store.LibraryException;
import org.benchlore.torque.answer.Answer;

import picocli.CommandLine.Option;

/** What every torque command has: JSON on request, and a refusal by the room of torques as a bad argument. */
abstract class TorqueTask implements Callable<Integer> {

    private static final Gson GSON = new Gson();

    private final Desk desk;

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    TorqueTask(Desk desk) {
        this.desk = desk;
    }

    final Desk desk() {
        return desk;
    }

    @Override
    public final Integer call() throws Exception {
        try {
            var answer = answer();
            var data = GSON.toJsonTree(answer.data()).getAsJsonObject();
            var text = AnswerText.of(answer) + more(data);
            if (json) {
                desk.print(data);
            } else {
                desk.out().print(text);
            }
            return answer.good() ? Exit.DONE : Exit.EMPTY;
        } catch (IllegalArgumentException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    /**
     * Answers.
     *
     * @throws IllegalArgumentException with one plain sentence if an argument cannot be used
     * @throws BadArgument likewise
     * @throws LibraryException if the library named cannot be read
     */
    abstract Answer answer() throws BadArgument, LibraryException;

    /** What is done besides answering, as text below the answer and in its JSON; nothing as a rule. */
    String more(JsonObject data) throws BadArgument {
        return "";
    }
}
