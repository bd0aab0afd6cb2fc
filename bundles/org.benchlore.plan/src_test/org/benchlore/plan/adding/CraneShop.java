// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import static org.benchlore.plan.QuayCrane.access;
import static org.benchlore.plan.QuayCrane.to;
import static org.benchlore.plan.QuayCrane.way;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.benchlore.evidence.CountingRules;
import org.benchlore.evidence.Evidence;
import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.Planner;
import org.benchlore.plan.QuayCrane;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/**
 * A small invented crane and what may be added to renewing its motor. An hour is 60.00 and tax 10 %. Behind the
 * hood, 30 min to open and 30 to close, are the motor (30 min, 200.00) and the brake (20 min, 50.00), whose failure ruins the
 * motor every other time.
 */
abstract class CraneShop {

    static final String RATE = "<rates id=\"rate\" perHour=\"60.00\" skill=\"TECHNICIAN\"/>";
    static final String MACHINE = "<functions id=\"fn-lifts\" title=\"It lifts\"/><functions id=\"fn-light\" title=\"Light\"/>"
            + "<components id=\"drive\" title=\"Drive\" functions=\"fn-lifts\"><components id=\"motor\" title=\"Motor\""
            + " functions=\"fn-lifts\"><parts href=\"../parts/p-motor.xmi#p-motor\"/></components></components>"
            + "<components id=\"brake\" title=\"Brake\" functions=\"fn-lifts\" BRAKE><parts href=\"../parts/p-brake.xmi#p-brake\"/>"
            + "<causes id=\"drags\" title=\"Drags\" TELLS><check href=\"../procedures/test-brake.xmi#test-brake\"/></causes></components>"
            + "<components id=\"lamp\" title=\"Lamp\" functions=\"fn-light\"/>"
            + access("hood", "", "minutesUsual=\"30 min\"", "minutesUsual=\"30 min\"", "");

    @TempDir
    Path folder;

    QuayCrane crane;
    OptionalInt years = OptionalInt.empty();
    CountingRules rules = CountingRules.usual();

    @BeforeEach
    void motorAndBrake() throws Exception {
        crane = new QuayCrane(folder).shop("currency=\"EUR\" taxPercent=\"10\" comebackCost=\"100.00\"", RATE);
        machine("ruins=\"motor\" ruinsPercent=\"50\" safetyCritical=\"YES\"", "checkFinds=\"90\" checkBlames=\"5\"");
        part("p-motor", "price=\"200.00\"", "");
        part("p-brake", "price=\"50.00\" leadTime=\"3 d\"", "");
        renew("renew-motor", "motor", "hood", "30 min", "p-motor");
        renew("renew-brake", "brake", "hood", "20 min", "p-brake");
        crane.work("test-brake", "TEST", "", "", "");
        crane.procedure("test-brake", "TEST", "", way("way-test", "", "minutesUsual=\"12 min\"", ""));
        note("a", "", of("brake") + "<seen count=\"1\" ofAbout=\"10\"/>", "renew-brake");
    }

    /** What a note is about. */
    static String of(String component) {
        return "<component href=\"../../machines/crane.xmi#" + component + "\"/>";
    }

    void machine(String brake, String tells) throws Exception {
        crane.put("machines/crane.xmi", "Machine", "id=\"crane\" title=\"Crane\" valueNow=\"900.00\"",
                MACHINE.replace("BRAKE", brake).replace("TELLS", tells));
    }

    void part(String id, String attributes, String body) throws Exception {
        crane.put("parts/" + id + ".xmi", "Part", "id=\"" + id + "\" title=\"" + id + "\" " + attributes, body);
    }

    static String component(String id) {
        return "<component href=\"../machines/crane.xmi#" + id + "\"/>";
    }

    void renew(String id, String component, String needs, String minutes, String part) throws Exception {
        var use = part.isEmpty() ? "" : "<parts id=\"use-" + id + "\"><part href=\"../parts/" + part + ".xmi#" + part + "\"/>"
                + component(component) + "</parts>";
        crane.procedure(id, "RENEW", "", component(component) + "<applicability><machine href=\"../machines/crane.xmi#crane\"/>"
                + "</applicability>" + way("way-" + id, needs, "minutesUsual=\"" + minutes + "\"", use));
    }

    /** A note that says to do a work, or something without one, while the motor is renewed. */
    void note(String id, String attributes, String body, String work) throws Exception {
        note(id, attributes, body, work, "");
    }

    void note(String id, String attributes, String body, String work, String addition) throws Exception {
        crane.put("notes/2026/note-2026-" + id + ".xmi", "FieldNote", "id=\"note-2026-" + id + "\" title=\"" + id + "\" date=\"2026-01-10\" "
                + (attributes.contains("status") ? "" : "status=\"SEEN\" ") + attributes, "<text>text</text>"
                + "<machine href=\"../../machines/crane.xmi#crane\"/>" + body + "<addWhileDoing id=\"add-" + id + "\" " + addition + ">"
                + (work.isEmpty() ? "" : "<work href=\"../../procedures/" + work + ".xmi#" + work + "\"/>")
                + "<whileDoing href=\"../../procedures/renew-motor.xmi#renew-motor\"/></addWhileDoing>");
    }

    void unit(String attributes, String meters) throws Exception {
        crane.put("units/crane-1.xmi", "Unit", "id=\"crane-1\" title=\"Crane 1\" " + attributes,
                "<machine href=\"../machines/crane.xmi#crane\"/>" + meters);
    }

    Adding adding(String... procedures) throws Exception {
        return adding(List.of(procedures), List.of(), List.of());
    }

    Adding adding(List<String> procedures, List<String> open, List<String> done) throws Exception {
        var request = new PlanRequest("crane-1", procedures, open, done, QuayCrane.WEDNESDAY, Optional.empty());
        try (var library = crane.open(); var evidence = Evidence.following(library)) {
            return new Adder(library, new Planner(library), evidence).adding(request, years, rules);
        }
    }

    Proposal brake() throws Exception {
        return adding("renew-motor").proposal("renew-brake").orElseThrow();
    }

    static List<String> ids(Adding adding) {
        return adding.proposals().stream().map(Proposal::id).toList();
    }

    static String value(Proposal one, Figure figure) {
        return one.assumptions().value(figure).stripTrailingZeros().toPlainString();
    }

    static void figures(Proposal one, Map<Figure, String> expected) {
        expected.forEach((figure, value) -> assertEquals(value, value(one, figure), figure.name()));
    }

    void job(String id, String day, String body) throws Exception {
        crane.put("jobs/2025/job-2025-" + id + ".xmi", "JobRecord", "id=\"job-2025-" + id + "\" title=\"" + id + "\" opened=\"" + day
                + "\" closed=\"" + day + "\" state=\"CLOSED\"", "<unit href=\"../../units/crane-1.xmi#crane-1\"/>" + body);
    }

    static String cameBack(String component) {
        return "<comebackOf href=\"job-2025-first.xmi#job-2025-first\"/><failed href=\"../../machines/crane.xmi#" + component + "\"/>";
    }
}
