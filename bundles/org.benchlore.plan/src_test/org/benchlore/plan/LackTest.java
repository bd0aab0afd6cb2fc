// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import static org.benchlore.plan.QuayCrane.way;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a shop has not got for a plan: people, skills, qualifications, tools. */
class LackTest {

    @TempDir
    Path folder;

    private QuayCrane crane;

    @BeforeEach
    void aToolAndTwoPeople() throws Exception {
        crane = new QuayCrane(folder).put("tools/wrench.xmi", "Tool", "id=\"wrench\" title=\"Wrench\"", "")
                .put("tools/puller.xmi", "Tool", "id=\"puller\"", "");
    }

    private List<String> lacks(String people, String work) throws Exception {
        crane.shop("", people).procedure("lift", "RENEW", "skill=\"APPRENTICE\"", way("way-lift", "", work, ""));
        return crane.plan("lift").lacks();
    }

    private static String person(String id, String attributes) {
        return "<people id=\"" + id + "\" title=\"" + id + "\" " + attributes + "/>";
    }

    @Test
    void withoutPeopleWrittenDownItSaysThatItWasNotLookedAt() throws Exception {
        assertEquals(List.of("No people are written down for this shop: whether there are enough was not looked at."), lacks("", ""));
        assertEquals(List.of("No people are written down for this shop: whether there are enough was not looked at."),
                lacks(person("ann", "left=\"2026-03-04\""), ""), "her last day was yesterday");
    }

    @Test
    void asManyAsWorkHereAreEnoughAndOneMoreIsNot() throws Exception {
        var two = person("ann", "skill=\"TECHNICIAN\" left=\"2026-03-05\"") + person("bo", "skill=\"TECHNICIAN\"")
                + person("cy", "skill=\"SENIOR\" left=\"2025-12-31\"");
        assertEquals(List.of(), lacks(two, "people=\"2\""));
        assertEquals(List.of("People: 3 at a time are needed, 2 work here."), lacks(two, "people=\"3\""));
    }

    @Test
    void aSkillNobodyReachesIsNamedAndAHigherOneWillDo() throws Exception {
        assertEquals(List.of("Nobody here is a senior."), lacks(person("ann", "skill=\"TECHNICIAN\""), "skill=\"SENIOR\""));
        assertEquals(List.of(), lacks(person("ann", "skill=\"SENIOR\""), "skill=\"SENIOR\""));
        assertEquals(List.of(), lacks(person("ann", "skill=\"SPECIALIST\""), "skill=\"SENIOR\""));
    }

    @Test
    void aQualificationNobodyHoldsIsNamedWithTheWorkThatNeedsIt() throws Exception {
        var ann = person("ann", "skill=\"TECHNICIAN\" qualifications=\"WELDING\"");
        assertEquals(List.of("Nobody here holds the qualification high voltage, needed for 'Lift'; local rules decide."),
                lacks(ann, "qualifications=\"WELDING HIGH_VOLTAGE\""));
        assertEquals(List.of(), lacks(ann, "qualifications=\"NONE NOT_RECORDED WELDING\""));
    }

    private static String use(String id, String tool, String text) {
        return "<tools id=\"" + id + "\"" + text + "><tool href=\"../tools/" + tool + ".xmi#" + tool + "\"/></tools>";
    }

    private List<ToolLine> tools(String site) throws Exception {
        crane.shop("", "<sites id=\"site\">" + site + "</sites>").procedure("lift", "RENEW", "", way("way-lift", "", "",
                use("u1", "wrench", " text=\"long\"") + use("u2", "puller", "") + use("u3", "wrench", " text=\"short\"")
                + use("u4", "wrench", " text=\" \"") + use("u5", "wrench", " text=\"long\"") + use("u6", "gone", "")));
        return crane.plan("lift").tools();
    }

    private static String holding(String id, String tool, String attributes) {
        return "<tools id=\"" + id + "\" " + attributes + "><tool href=\"tools/" + tool + ".xmi#" + tool + "\"/></tools>";
    }

    @Test
    void aToolStandsOnceWithWhatIsSaidAtItsUses() throws Exception {
        var tools = tools("");
        assertEquals(List.of("wrench", "puller", "gone"), tools.stream().map(ToolLine::id).toList());
        assertEquals(List.of(List.of("long", "short"), List.of(), List.of()), tools.stream().map(ToolLine::remarks).toList());
        assertEquals(List.of(true, true, false), tools.stream().map(it -> it.tool().isPresent()).toList());
        assertEquals(List.of(List.of(), List.of(), List.of()), tools.stream().map(ToolLine::places).toList());
        assertFalse(tools.get(0).isDue(), "none is held, so none is due");
    }

    @Test
    void aToolIsDueOnceAllOfItsKindAre() throws Exception {
        var one = holding("h1", "wrench", "place=\"Wall\" calibrationDue=\"2026-03-03\"") + holding("h2", "puller", "")
                + "<tools id=\"h3\"/>";
        var tools = tools(one);
        assertEquals(List.of(List.of("Wall"), List.of(""), List.of()), tools.stream().map(ToolLine::places).toList());
        assertEquals(List.of(true, false, false), tools.stream().map(ToolLine::isDue).toList());
        assertFalse(tools(one + holding("h4", "wrench", "calibrationDue=\"2026-03-04\"")).get(0).isDue(), "this one holds today");
        assertTrue(tools(one + holding("h4", "wrench", "calibrationDue=\"2025-03-04\"")).get(0).isDue());
    }
}
