// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import org.benchlore.diagnose.SmallShop;
import org.benchlore.diagnose.book.Openings.Opening;
import org.benchlore.model.Access;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpeningsTest {

    private static final String ACCESSES = """
            <components id="box" title="Box"><components id="motor" title="Motor"/></components>
            <components id="drum" title="Drum"/>
            <components id="hoist" title="Hoist"/>
            <accesses id="on-lift" title="On the lift" component="hoist"><strip id="s1" minutesUsual="30 min"/></accesses>
            <accesses id="over-pit" title="Over the pit"><needs anyOf="yard-free"/><strip id="s2" minutesUsual="5 min"/></accesses>
            <accesses id="yard-free" title="Yard free"><strip id="s3" minutesUsual="10 min"/></accesses>
            <accesses id="guard-off" title="Guard off"><needs anyOf="on-lift over-pit"/><strip id="s4" minutesUsual="20 min"/></accesses>
            <accesses id="lid-off" title="Lid off" component="box"><needs anyOf="guard-off"/><strip id="s5" minutesUsual="7 min"/></accesses>
            <accesses id="box-out" title="Box out" covers="lid-off"><needs anyOf="guard-off"/><strip id="s6" minutesUsual="60 min"/></accesses>
            <components id="left" title="Left"/>
            <components id="right" title="Right"/>
            <accesses id="left-up" title="Left up" component="left" notWith="right-up"><strip id="s7" minutesUsual="8 min"/></accesses>
            <accesses id="right-up" title="Right up" component="right"><strip id="s8" minutesUsual="12 min"/></accesses>
            <accesses id="round-a" title="Round a"><needs anyOf="round-b"/></accesses>
            <accesses id="round-b" title="Round b"><needs anyOf="round-a"/></accesses>
            <accesses id="ring" title="Ring"><needs anyOf="ring yard-free"/></accesses>
            """;

    @TempDir
    Path folder;

    private <T> T with(String need, Function<Context, T> question) throws Exception {
        var shop = new SmallShop(folder).machine(ACCESSES).put("procedures/look.xmi", "<book:Procedure %s id=\"look\""
                + " formatVersion=\"1\" kind=\"TEST\"><applicability><machine href=\"../machines/winch.xmi#winch\"/></applicability>"
                + "<ways id=\"way\">" + need + "<work id=\"work\" minutesUsual=\"15 min\"/></ways></book:Procedure>");
        try (var library = shop.open()) {
            var book = new MachineBook(library, (Machine) library.top("winch").orElseThrow());
            return question.apply(new Context(new Openings(book), book, (Procedure) library.top("look").orElseThrow()));
        }
    }

    private record Context(Openings openings, MachineBook book, Procedure procedure) {

        Opening look() {
            return openings.of(procedure.getWays().get(0)).orElseThrow();
        }

        Opening component(String id) {
            return openings.of(book.components().values().stream().filter(one -> one.getId().equals(id)).findFirst()
                    .orElseThrow());
        }

        double minutes(String... names) {
            return openings.costs(Map.of("more", 4.0)).minutes(Set.of(names));
        }
    }

    private static List<String> ids(Opening opening) {
        return opening.accesses().stream().map(Access::getId).toList();
    }

    private static String needs(String... ids) {
        var text = new StringBuilder();
        for (var id : ids) {
            text.append("<needs>");
            for (var any : id.split(" ")) {
                text.append("<anyOf href=\"../machines/winch.xmi#" + any + "\"/>");
            }
            text.append("</needs>");
        }
        return text.toString();
    }

    @Test
    void ofSeveralThatWillDoTheOneOpenedSoonestIsTakenInTheOrderOfOpening() throws Exception {
        assertEquals(List.of("yard-free", "over-pit", "guard-off"), with(needs("guard-off"), all -> ids(all.look())));
        assertEquals(35.0, with(needs("guard-off"), all -> all.minutes(all.look().name())));
    }

    @Test
    void whatAnotherOpeningGivesForFreeIsNotOpened() throws Exception {
        assertEquals(List.of("yard-free", "over-pit", "guard-off", "box-out"),
                with(needs("lid-off", "box-out"), all -> ids(all.look())));
    }

    @Test
    void anOpeningThatNeedsItselfDoesNotGoRoundForever() throws Exception {
        assertEquals(List.of("yard-free", "ring"), with(needs("ring"), all -> ids(all.look())));
    }

    @Test
    void aComponentIsReachedByTheOpeningOfWhatItIsPartOf() throws Exception {
        assertEquals(List.of("yard-free", "over-pit", "guard-off", "lid-off"), with("", all -> ids(all.component("motor"))));
        assertEquals(Opening.NOTHING, with("", all -> all.component("drum")));
    }

    @Test
    void aProcedureWithoutNeedsOpensNothing() throws Exception {
        assertEquals(Opening.NOTHING, with("", Context::look));
        assertEquals(4.0, with("", all -> all.minutes("more")));
        assertEquals(0.0, with("", all -> all.minutes()));
    }

    /** The pit is the sooner one by itself; with what only the lift gives, the lift does for both. */
    @Test
    void forSeveralChecksTogetherThePlanMayOpenAnotherOne() throws Exception {
        assertEquals(List.of(35.0, 30.0, 50.0, 54.0), with(needs("guard-off"), all -> {
            var guard = all.look().name();
            var lift = all.component("hoist").name();
            return List.of(all.minutes(guard), all.minutes(lift), all.minutes(guard, lift), all.minutes(guard, lift, "more"));
        }));
    }

    @Test
    void theSameNeedsAreOneOpeningHoweverTheyAreWritten() throws Exception {
        assertEquals("on-lift or over-pit and yard-free",
                with(needs("yard-free", "over-pit on-lift", "yard-free"), all -> all.look().name()));
    }

    @Test
    void whatMustNotBeOpenTogetherIsOpenedOneAfterTheOther() throws Exception {
        assertEquals(20.0, with(needs("left-up"), all -> all.minutes(all.component("left").name(),
                all.component("right").name())));
    }

    @Test
    void aWayForOtherMachinesIsNotOneOfThisMachine() throws Exception {
        assertEquals(Optional.empty(), with("<needs><anyOf href=\"../machines/crane.xmi#over-pit\"/></needs>",
                all -> all.openings().of(all.procedure().getWays().get(0))));
    }

    @Test
    void whatCannotBeOpenedCostsNothingAndIsSaid() throws Exception {
        assertEquals(List.of(0.0, 30.0), with(needs("round-a"), all -> {
            var name = all.look().name();
            var lift = all.component("hoist").name();
            return List.of(all.minutes(name), all.minutes(name, lift));
        }));
        assertEquals(List.of("The time to open for a check is not counted: it cannot be reached: these accesses need each other:"
                + " round-a needs round-b needs round-a; take one need out."), with(needs("round-a"), all -> {
                    all.look();
                    return all.openings().lacks();
                }));
        assertEquals(List.of(), with(needs("guard-off"), all -> all.openings().lacks()));
    }
}
