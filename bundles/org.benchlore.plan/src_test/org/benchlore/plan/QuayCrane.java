// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.search.PlanException;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;

/** A small library about an invented quay crane, written as files, and plans of it for Wednesday 4 March 2026. */
public final class QuayCrane {

    public static final LocalDate WEDNESDAY = LocalDate.of(2026, 3, 4);

    private final Path root;
    private final Path cache;

    public QuayCrane(Path folder) throws IOException {
        root = Files.createDirectories(folder.resolve("library"));
        cache = folder.resolve("cache");
        shop("", "");
        crane("");
        put("units/crane-1.xmi", "Unit", "id=\"crane-1\" title=\"Crane 1\"", "<machine href=\"../machines/crane.xmi#crane\"/>");
        put("machines/barge.xmi", "Machine", "id=\"barge\" title=\"Barge\"", access("hatch", "", "", "", ""));
    }

    public QuayCrane put(String path, String type, String attributes, String body) throws IOException {
        var file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<book:" + type + " xmi:version=\"2.0\""
                + " xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:book=\"urn:benchlore:book:1\" formatVersion=\"1\" " + attributes
                + ">" + body + "</book:" + type + ">\n");
        return this;
    }

    public QuayCrane shop(String attributes, String body) throws IOException {
        return put("shop.xmi", "Shop", "id=\"shop\" title=\"Shop\" " + attributes, body);
    }

    public QuayCrane crane(String body) throws IOException {
        return put("machines/crane.xmi", "Machine", "id=\"crane\" title=\"Crane\"", body);
    }

    /** An access: what it needs, ids apart by spaces and one of several by bars; attributes of strip and refit; a body. */
    public static String access(String id, String needs, String strip, String refit, String body) {
        return "<accesses id=\"" + id + "\" title=\"" + title(id) + "\">" + needs(needs) + body + "<strip id=\"strip-" + id
                + "\" title=\"Strip " + id + "\" " + strip + "/><refit id=\"refit-" + id + "\" title=\"Refit " + id + "\" "
                + refit + "/></accesses>";
    }

    private static String title(String id) {
        return id.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + id.substring(1).replace('-', ' ');
    }

    private static String needs(String needs) {
        return needs.isEmpty() ? "" : Stream.of(needs.split(" ")).map(any -> "<needs>" + Stream.of(any.split("\\|"))
                .map(id -> "<anyOf href=\"" + machine(id) + "\"/>").collect(Collectors.joining()) + "</needs>")
                .collect(Collectors.joining());
    }

    /** Where an access or a component stands, as seen from a folder of the library. */
    static String machine(String id) {
        return "../machines/" + (id.equals("hatch") ? "barge" : "crane") + ".xmi#" + id;
    }

    /** A way to do something: what it needs, attributes of its work, a body of it. */
    public static String way(String id, String needs, String work, String body) {
        return "<ways id=\"" + id + "\">" + needs(needs) + "<work id=\"work-" + id + "\" " + work + ">" + body + "</work></ways>";
    }

    /** References to procedures. */
    public static String to(String tag, String... procedures) {
        return Stream.of(procedures).map(id -> "<" + tag + " href=\"../procedures/" + id + ".xmi#" + id + "\"/>")
                .collect(Collectors.joining());
    }

    /** A procedure with a body. */
    public QuayCrane procedure(String id, String kind, String attributes, String body) throws IOException {
        return put("procedures/" + id + ".xmi", "Procedure", "id=\"" + id + "\" kind=\"" + kind + "\" title=\"" + title(id)
                + "\" status=\"REVIEWED\" " + attributes, body);
    }

    /** A procedure of ten minutes with one way. */
    public QuayCrane work(String id, String kind, String needs, String states, String body) throws IOException {
        return procedure(id, kind, "", way("way-" + id, needs, "minutesUsual=\"10 min\" states=\"" + states + "\"",
                "<steps id=\"step-" + id + "\"><text>Do it.</text></steps>") + body);
    }

    public Library open() throws Exception {
        return Library.open(root, cache, new NullProgressMonitor());
    }

    public Plan plan(String... procedures) throws Exception {
        return plan(List.of(procedures), List.of(), List.of());
    }

    public Plan plan(List<String> procedures, List<String> open, List<String> done) throws Exception {
        try (var library = open()) {
            return new Planner(library).plan(new PlanRequest("crane-1", procedures, open, done, WEDNESDAY, Optional.empty()));
        }
    }

    /** Why there is no plan. */
    String refused(List<String> procedures, List<String> open) throws Exception {
        try {
            plan(procedures, open, List.of());
        } catch (PlanException e) {
            return e.getMessage() + " " + e.elements();
        }
        return "";
    }

    /** A plan in short: '+' opens, '-' closes, '*' comes before, ')' after closing, '?' proves; what is done again says so. */
    static List<String> order(Plan plan) {
        return plan.items().stream().map(item -> switch (item.part()) {
            case BEFORE -> "*";
            case STRIP -> "+";
            case WORK -> "";
            case REFIT -> "-";
            case CLOSING -> ")";
            case PROOF -> "?";
        } + item.id() + (item.isAgain() ? " again" : "")).toList();
    }

    /** States to change before the items of a plan, with their ids, where there are any. */
    static List<String> changes(Plan plan) {
        return plan.items().stream().filter(item -> !item.change().isEmpty()).map(item -> (item.part() == Part.REFIT ? "-" : "")
                + item.id() + " " + item.change()).toList();
    }
}
