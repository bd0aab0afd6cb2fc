// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

import org.benchlore.diagnose.SmallShop;
import org.benchlore.model.Access;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpeningsTest {

    private static final String ACCESSES = """
            <components id="box" title="Box"><components id="motor" title="Motor"/></components>
            <components id="drum" title="Drum"/>
            <accesses id="on-lift" title="On the lift"><strip id="s1" minutesUsual="30 min"/></accesses>
            <accesses id="over-pit" title="Over the pit"><needs anyOf="yard-free"/><strip id="s2" minutesUsual="5 min"/></accesses>
            <accesses id="yard-free" title="Yard free"><strip id="s3" minutesUsual="10 min"/></accesses>
            <accesses id="guard-off" title="Guard off"><needs anyOf="on-lift over-pit"/><strip id="s4" minutesUsual="20 min"/></accesses>
            <accesses id="lid-off" title="Lid off" component="box"><needs anyOf="guard-off"/><strip id="s5" minutesUsual="7 min"/></accesses>
            <accesses id="box-out" title="Box out" covers="lid-off"><needs anyOf="guard-off"/><strip id="s6" minutesUsual="60 min"/></accesses>
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

        double minutes(Set<Access> accesses) {
            return openings.costs(Map.of("more", 4.0)).minutes(accesses.stream().map(one -> openings.name(one).toString())
                    .collect(java.util.stream.Collectors.toSet()));
        }

        List<String> look() {
            return openings.of(procedure).stream().map(Access::getId).sorted().toList();
        }
    }

    private static String needs(String... ids) {
        var text = new StringBuilder();
        for (var id : ids) {
            text.append("<needs><anyOf href=\"../machines/winch.xmi#" + id + "\"/></needs>");
        }
        return text.toString();
    }

    @Test
    void ofSeveralThatWillDoTheOneOpenedSoonestIsTaken() throws Exception {
        assertEquals(List.of("guard-off", "over-pit", "yard-free"), with(needs("guard-off"), Context::look));
        assertEquals(35.0, with(needs("guard-off"), all -> all.minutes(all.openings().of(all.procedure()))));
    }

    @Test
    void whatAnotherOpeningGivesForFreeIsNotOpened() throws Exception {
        assertEquals(List.of("box-out", "guard-off", "over-pit", "yard-free"), with(needs("lid-off", "box-out"), Context::look));
    }

    @Test
    void anOpeningThatNeedsItselfDoesNotGoRoundForever() throws Exception {
        assertEquals(List.of("ring", "yard-free"), with(needs("ring"), Context::look));
    }

    @Test
    void aComponentIsReachedByTheOpeningOfWhatItIsPartOf() throws Exception {
        assertEquals(List.of("guard-off", "lid-off", "over-pit", "yard-free"), with("", all -> all.openings().of(all.book()
                .components().values().stream().filter(one -> one.getId().equals("motor")).findFirst().orElseThrow())
                .stream().map(Access::getId).sorted().toList()));
        assertEquals(Set.of(), with("", all -> all.openings().of(all.book().components().values().stream()
                .filter(one -> one.getId().equals("drum")).findFirst().orElseThrow())));
    }

    @Test
    void aProcedureWithoutNeedsOpensNothing() throws Exception {
        assertEquals(List.of(), with("", Context::look));
        assertEquals(4.0, with("", all -> all.openings().costs(Map.of("more", 4.0)).minutes(Set.of("more"))));
    }
}
