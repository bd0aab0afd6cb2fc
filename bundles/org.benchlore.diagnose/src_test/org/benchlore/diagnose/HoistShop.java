// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A small library about an invented hoist whose drive was renewed, and a job in which the teach-in then failed. */
public final class HoistShop {

    private static final String ON_MACHINE = "<applicability><machine href=\"../machines/winch.xmi#winch\"/></applicability>";

    private final SmallShop shop;

    public HoistShop(Path folder) throws IOException {
        shop = new SmallShop(folder).machine("""
                <functions id="fn-lifts" title="The hoist lifts"><text>Motor, gear, brake.</text></functions>
                <functions id="fn-lights" title="The lamp lights"/>
                <components id="drive" title="Drive of the hoist">
                  <components id="motor" title="Motor" functions="fn-lifts"><parts href="../parts/p-motor.xmi#p-motor"/>
                    <causes id="motor-weak" title="Motor weak" causedBy="gear-dry"><symptoms>Hoist stops half way</symptoms></causes>
                  </components>
                  <components id="gear" title="Gear" functions="fn-lifts" ruins="motor">
                    <causes id="gear-dry" title="Gear dry" frequency="OFTEN"><symptoms>Hoist stops half way</symptoms></causes>
                  </components>
                </components>
                <components id="band" title="Brake band" functions="fn-lifts">
                  <causes id="band-drags" title="Band drags" frequency="OFTEN"><symptoms>Hoist stops half way</symptoms></causes>
                </components>
                <components id="lamp" title="Lamp" functions="fn-lights"/>
                <components id="circuit" title="Oil circuit of it" functions="fn-lifts"/>
                <components id="brain" title="Control unit" functions="fn-lifts">
                  <causes id="brain-lost" title="Values lost"/>
                </components>
                <accesses id="cover-off" title="Cover off"><afterClosing href="../procedures/fill.xmi#fill"/>
                  <strip id="cover-strip" minutesUsual="20 min"><steps id="step-plug"><text>Unplug the connector of the motor.</text></steps></strip>
                </accesses>
                """);
        part("p-motor", "title=\"New motor\" number=\"M1\"", "");
        part("p-old", "title=\"Old motor\" number=\"M0\"", "<supersededBy href=\"p-motor.xmi#p-motor\"/>");
        part("p-kit", "title=\"Kit\" number=\"K1\"", "<kit quantity=\"1\"><part href=\"p-motor.xmi#p-motor\"/></kit>");
        part("p-odd", "title=\"Odd part\" number=\"X1\"", "");
        procedure("renew-drive", "kind=\"RENEW\" title=\"Renew the drive\"", component("drive")
                + "<includes href=\"renew-gear.xmi#renew-gear\"/><afterClosing href=\"bleed.xmi#bleed\"/>"
                + "<afterClosing href=\"learn.xmi#learn\"/>", "<needs><anyOf href=\"../machines/winch.xmi#cover-off\"/></needs>",
                "<parts id=\"use-a\"><part href=\"../parts/p-kit.xmi#p-kit\"/></parts>"
                + "<parts id=\"use-b\" need=\"IF_FOUND\"><part href=\"../parts/p-odd.xmi#p-odd\"/>" + component("band") + "</parts>"
                + "<steps id=\"step-mark\" kind=\"MARK\"><text>Mark the flange.</text></steps>"
                + "<steps id=\"step-look\" kind=\"INSPECT\"><text>Look at the brake band and its grease.</text></steps>"
                + "<steps id=\"step-grease\"><text>Put grease on the shaft. Mind the brake band.</text></steps>");
        procedure("renew-gear", "kind=\"RENEW\" title=\"Renew the gear\"", component("gear"), "",
                "<parts id=\"use-c\"><part href=\"../parts/p-odd.xmi#p-odd\"/>" + component("gear") + "</parts>"
                + "<steps id=\"step-union\"><text>Tighten the union.</text></steps>");
        procedure("bleed", "kind=\"SERVICE\" title=\"Bleed it\"", component("circuit"), "", "");
        procedure("fill", "kind=\"SERVICE\" title=\"Fill it\"", component("circuit"), "", "");
        procedure("set-band", "kind=\"ADJUST\" title=\"Set the band\"", component("band"), "", "");
        procedure("test-band", "kind=\"TEST\" title=\"Test the band\"", component("band"), "", "");
        procedure("learn", "kind=\"TEACH_IN\" title=\"Teach it in\"", component("brain"), "", """
                <conditions id="con-arm"><text> Arm down. </text><why>It swings.</why></conditions>
                <conditions id="con-code"><text>No code.</text></conditions>
                <steps id="step-volt"><text>Measure.</text>
                  <measurements id="m-volt" what="Voltage" low="24 V" high="28 V"/>
                  <measurements id="m-bare"/>
                </steps>
                <steps id="step-end" kind="DECIDE"><text>Read how it ended.</text>
                  <measurements id="m-late" what="Late"/>
                </steps>
                """);
        procedure("measure-band", "kind=\"TEST\" title=\"Measure the band\"", component("band"), "", """
                <steps id="step-gap" kind="MEASURE"><text>Measure the gap.</text>
                  <measurements id="m-gap" what="Gap" low="1 mm" high="3 mm"/>
                  <outcomes id="gap-below" answer="Below 1 mm"><points href="../machines/winch.xmi#band-drags"/></outcomes>
                  <outcomes id="gap-above" answer="Above 3 mm"><points href="../machines/winch.xmi#gear-dry"/></outcomes>
                  <outcomes id="gap-within" answer="Within"><against href="../machines/winch.xmi#band-drags"/></outcomes>
                </steps>
                """);
    }

    private static String component(String id) {
        return "<component href=\"../machines/winch.xmi#" + id + "\"/>";
    }

    private void part(String id, String attributes, String body) throws IOException {
        shop.put("parts/" + id + ".xmi", "<book:Part %s id=\"" + id + "\" formatVersion=\"1\" " + attributes + ">" + body
                + "</book:Part>");
    }

    public void procedure(String id, String attributes, String body, String needs, String work) throws IOException {
        shop.put("procedures/" + id + ".xmi", "<book:Procedure %s id=\"" + id + "\" formatVersion=\"1\" " + attributes + ">"
                + body + ON_MACHINE + "<ways id=\"way-" + id + "\">" + needs + "<work id=\"work-" + id + "\" minutesUsual=\"30 min\">"
                + work + "</work></ways></book:Procedure>");
    }

    /** A job on the unit in which the drive was renewed and the teach-in failed, then something more was done. */
    public void job(String gap, String verdict) throws IOException {
        shop.put("jobs/2026/job-2026-drive.xmi", """
                <book:JobRecord %s id="job-2026-drive" formatVersion="1" title="Drive renewed" opened="2026-03-01">
                  <unit href="../../units/winch-1.xmi#winch-1"/>
                  <rounds id="round-1" kind="STRIP">
                    <done minutes="90 min"><procedure href="../../procedures/renew-drive.xmi#renew-drive"/>
                      <renewed href="../../machines/winch.xmi#motor"/>
                      <fitted href="../../parts/p-motor.xmi#p-motor"/><fitted href="../../parts/p-old.xmi#p-old"/>
                      <fitted href="../../parts/p-odd.xmi#p-odd"/></done>
                    <done minutes="12 min"><procedure href="../../procedures/bleed.xmi#bleed"/></done>
                    <removed><condition> Black inside. </condition><component href="../../machines/winch.xmi#motor"/></removed>
                    <measured value="23 V" verdict="PASS"><measurement href="../../procedures/learn.xmi#m-volt"/></measured>
                  </rounds>
                  <rounds id="round-2" kind="TEACH_IN_FAILED">
                    <measured value="22 V" verdict="FAIL"><measurement href="../../procedures/learn.xmi#m-volt"/></measured>
                    <measured value="GAP" verdict="VERDICT"><measurement href="../../procedures/measure-band.xmi#m-gap"/></measured>
                  </rounds>
                  <rounds id="round-3" kind="STRIP_AGAIN">
                    <done><procedure href="../../procedures/set-band.xmi#set-band"/><renewed href="../../machines/winch.xmi#band"/></done>
                  </rounds>
                  <left><text>Moved freely.</text><component href="../../machines/winch.xmi#band"/></left>
                </book:JobRecord>""".replace("GAP", gap).replace("VERDICT", verdict));
    }

    public SmallShop shop() {
        return shop;
    }

    public Assessment after(String about, String work, String... answers) throws Exception {
        return shop.ask(SmallShop.question(about, List.of("Hoist stops half way"), List.of(), work, answers));
    }
}
