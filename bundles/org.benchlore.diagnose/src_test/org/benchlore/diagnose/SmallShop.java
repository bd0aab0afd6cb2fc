// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.diagnose.Question.Reply;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;

/** A small library on the disk: a winch with a motor, a brake and a switch, written as files. */
public final class SmallShop {

    static final String WINCH = """
            <functions id="fn-pulls" title="The winch pulls"/>
            <functions id="fn-holds" title="The load is held"/>
            <components id="motor" title="Motor" functions="fn-pulls">
              <causes id="motor-burnt" title="Motor burnt" frequency="SOMETIMES">
                <symptoms>Winch does not pull</symptoms>
                <checkText>Smell at the motor.</checkText>
                <codes href="../codes/w1.xmi#w1"/>
              </causes>
              <causes id="motor-wet" title="Motor wet" frequency="SOMETIMES">
                <symptoms>Winch does not pull</symptoms>
                <checkText>Look into the motor.</checkText>
                <codes href="../codes/w1.xmi#w1"/>
              </causes>
            </components>
            <components id="brake" title="Brake" functions="fn-holds" safetyCritical="YES">
              <components id="brake-lining" title="Brake lining" functions="fn-holds" ruins="motor">
                <causes id="lining-oily" title="Lining oily" frequency="RARELY" causedBy="motor-wet">
                  <symptoms>Load creeps down</symptoms>
                  <checkText>Wipe the lining with a white rag.</checkText>
                </causes>
              </components>
            </components>
            <components id="switch" title="Hand switch" functions="fn-pulls"/>
            <accesses id="cover-off" title="Cover off" component="motor">
              <strip id="cover-strip" minutesUsual="20 min"/>
            </accesses>
            """;

    private final Path root;
    private final Path cache;

    public SmallShop(Path folder) throws IOException {
        root = Files.createDirectories(folder.resolve("library"));
        cache = folder.resolve("cache");
        shop("");
        machine(WINCH);
        put("codes/w1.xmi", "<book:FaultCode %s id=\"w1\" formatVersion=\"1\" title=\"No movement\" scheme=\"MAKER\""
                + " code=\"W101\"><machines href=\"../machines/winch.xmi#winch\"/>"
                + "<components href=\"../machines/winch.xmi#switch\"/></book:FaultCode>");
        put("units/winch-1.xmi", "<book:Unit %s id=\"winch-1\" formatVersion=\"1\" title=\"Winch 1\" serial=\"W200\">"
                + "<machine href=\"../machines/winch.xmi#winch\"/></book:Unit>");
    }

    public SmallShop shop(String body) throws IOException {
        return put("shop.xmi", "<book:Shop %s id=\"shop\" formatVersion=\"1\" title=\"Shop\">" + body + "</book:Shop>");
    }

    public SmallShop machine(String body) throws IOException {
        return put("machines/winch.xmi", "<book:Machine %s id=\"winch\" formatVersion=\"1\" title=\"Winch\">" + body
                + "</book:Machine>");
    }

    public SmallShop put(String path, String xml) throws IOException {
        var file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + xml.replace("%s", "xmi:version=\"2.0\""
                + " xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:book=\"urn:benchlore:book:1\"") + "\n");
        return this;
    }

    /** Writes a note on a cause, with further attributes and a body. */
    public SmallShop note(String id, String cause, String attributes, String body) throws IOException {
        return put("notes/2026/note-2026-" + id + ".xmi", "<book:FieldNote %s id=\"note-2026-" + id
                + "\" formatVersion=\"1\" title=\"" + id + "\" " + attributes + "><text>text</text>"
                + "<machine href=\"../../machines/winch.xmi#winch\"/>"
                + (cause.isEmpty() ? "" : "<cause href=\"../../machines/winch.xmi#" + cause + "\"/>") + body + "</book:FieldNote>");
    }

    /** Writes a job on the unit with a cause found. */
    public SmallShop job(String id, String cause, String attributes, String body) throws IOException {
        return put("jobs/2026/job-2026-" + id + ".xmi", "<book:JobRecord %s id=\"job-2026-" + id
                + "\" formatVersion=\"1\" title=\"" + id + "\" " + attributes + ">"
                + "<unit href=\"../../units/winch-1.xmi#winch-1\"/>" + body
                + (cause.isEmpty() ? "" : "<cause href=\"../../machines/winch.xmi#" + cause + "\"/>") + "</book:JobRecord>");
    }

    public Library open() throws Exception {
        return Library.open(root, cache, new NullProgressMonitor());
    }

    public Assessment ask(Question question) throws Exception {
        try (var library = open()) {
            return new Diagnoses(library).ask(question);
        }
    }

    public Assessment ask(String... symptoms) throws Exception {
        return ask(question("winch", List.of(symptoms), List.of(), null));
    }

    public static Question question(String about, List<String> symptoms, List<String> codes, String after,
            String... answers) {
        return new Question(about, symptoms, codes, Optional.ofNullable(after), Stream.of(answers)
                .map(answer -> new Reply(answer.split("=")[0], answer.split("=")[1])).toList());
    }

    public static RankedCause cause(Assessment answer, String id) {
        return answer.causes().stream().filter(cause -> cause.address().id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError(id + " is not among " + answer.causes().stream()
                        .map(RankedCause::title).toList()));
    }
}
