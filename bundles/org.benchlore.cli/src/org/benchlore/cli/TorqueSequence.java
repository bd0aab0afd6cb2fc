// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import com.google.gson.JsonObject;
import org.benchlore.page.drawing.SequenceDrawing;
import org.benchlore.torque.answer.Answer;
import org.benchlore.torque.answer.SequenceQuestion;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Gives the order in which fasteners are tightened, and draws it. */
@Command(name = "sequence", description = "Give the order in which fasteners are tightened, and draw it.",
        mixinStandardHelpOptions = true,
        footer = {"", "  sequence circle 8      sequence grid 2x5      sequence grid 1x6      sequence own 3,1,2,4"})
final class TorqueSequence extends TorqueTask {

    @Parameters(index = "0", paramLabel = "circle|grid|own", description = "How they lie, or an order of your own.")
    private String kind;

    @Parameters(index = "1", paramLabel = "SIZE", description = "Number, ROWSxCOLUMNS, or the order.")
    private String size;

    @Option(names = "--stages", paramLabel = "PERCENT,...", description = "Stages in percent (default 30,70,100).")
    private String stages;

    @Option(names = "--of", paramLabel = "TORQUE", description = "Final torque, such as '90 N·m', to give each stage's.")
    private String torque;

    @Option(names = "--svg", paramLabel = "FILE", description = "Write the drawing to a new file.")
    private Path file;

    TorqueSequence(Desk desk) {
        super(desk);
    }

    private SequenceQuestion question() {
        return new SequenceQuestion(kind, size, stages, torque);
    }

    @Override
    Answer answer() {
        return question().answer();
    }

    @Override
    String more(JsonObject data) throws BadArgument {
        if (file == null) {
            return "";
        }
        if (Files.exists(file)) {
            throw new BadArgument("'" + file + "' is there already and is not written over: name a new file.");
        }
        try {
            Files.writeString(file, SequenceDrawing.of(question().sequence(), question().stageList()).svg());
        } catch (IOException e) {
            throw new BadArgument("The drawing cannot be written to '" + file + "': name a file in a folder that is there "
                    + "and may be written to.");
        }
        data.addProperty("drawing", file.toString());
        return AnswerText.row("Drawing", file.toString());
    }
}
