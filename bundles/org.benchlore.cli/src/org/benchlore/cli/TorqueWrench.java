// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

import org.benchlore.store.LibraryException;
import org.benchlore.torque.answer.Answer;
import org.benchlore.torque.answer.WrenchQuestion;
import org.benchlore.torque.wrench.WrenchRack;
import org.benchlore.workshop.ShopWrenches;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what to set a wrench with an offset adapter to, and which wrenches of the shop may be used for it. */
@Command(name = "wrench", description = "Say what to set a torque wrench with an offset adapter to.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit codes: 0 done; 1 no wrench of the library fits; 2 bad argument; 3 library unreadable."})
final class TorqueWrench extends TorqueTask {

    @Parameters(index = "0", paramLabel = "TORQUE", description = "Torque wanted on the fastener, such as 80.")
    private String torque;

    @Parameters(index = "1", paramLabel = "UNIT", description = "Such as N·m or lbf·ft.")
    private String unit;

    @Option(names = "--length", paramLabel = "MM", required = true,
            description = "Middle of the grip to the drive of the wrench, mm.")
    private String length;

    @Option(names = "--adapter", paramLabel = "MM", required = true,
            description = "Drive of the wrench to the fastener, mm.")
    private String adapter;

    @Option(names = "--angle", paramLabel = "DEG", defaultValue = "0",
            description = "Between wrench and adapter: 0 in line (default), 90 square, 180 folded back.")
    private String angle;

    @Option(names = "--library", paramLabel = "DIR",
            description = "Folder of a library whose wrenches are chosen from (default: none are named).")
    private Path folder;

    TorqueWrench(Desk desk) {
        super(desk);
    }

    @Override
    Answer answer() throws LibraryException {
        return new WrenchQuestion(torque + " " + unit, given(length), given(adapter), angle, rack(), LocalDate.now())
                .answer();
    }

    /** An option with nothing in it is a mistake, not an adapter left out. */
    private static String given(String text) {
        return text.isBlank() ? "''" : text;
    }

    /** Only a library that is named: wrenches of the demonstration are nobody's. */
    private Optional<WrenchRack> rack() throws LibraryException {
        if (folder == null) {
            return Optional.empty();
        }
        try (var open = desk().openAndRemark(folder)) {
            return Optional.of(new ShopWrenches(open.library()).rack());
        }
    }
}
