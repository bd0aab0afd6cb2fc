// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import static org.benchlore.diagnose.SmallShop.cause;
import static org.benchlore.diagnose.SmallShop.question;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Notes and jobs of other machines of the family, each figure worked out by hand. */
class FamilyTest {

    private static final double EXACT = 1e-12;
    private static final String DEAD = "Winch does not pull";

    @TempDir
    Path folder;
    private SmallShop shop;

    @BeforeEach
    void make() throws Exception {
        shop = new SmallShop(folder);
        shop.put("machines/winch.xmi", "<book:Machine %s id=\"winch\" formatVersion=\"1\" title=\"Winch\" family=\"W\">"
                + SmallShop.WINCH + "</book:Machine>");
        shop.put("parts/p1.xmi", "<book:Part %s id=\"p1\" formatVersion=\"1\" number=\"P1\"/>");
        sister("W");
        shop.put("units/big-1.xmi", "<book:Unit %s id=\"big-1\" formatVersion=\"1\" title=\"Big 1\">"
                + "<machine href=\"../machines/big.xmi#big\"/></book:Unit>");
    }

    /** Its motor has the same id and one cause of the same id, one of the same title; its jaw is like nothing here. */
    private void sister(String family) throws Exception {
        shop.put("machines/big.xmi", "<book:Machine %s id=\"big\" formatVersion=\"1\" title=\"Big winch\" family=\"" + family + "\">"
                + "<components id=\"motor\" title=\"Big motor\"><causes id=\"motor-burnt\" title=\"Windings burnt\"/>"
                + "<causes id=\"damp\" title=\"motor WET\"/><causes id=\"odd\" title=\"Odd\"/></components>"
                + "<components id=\"jaw\" title=\"Jaw\"><causes id=\"lining-oily\" title=\"Lining oily\"/></components></book:Machine>");
    }

    private void note(String id, String cause, String body) throws Exception {
        shop.put("notes/2026/note-2026-" + id + ".xmi", "<book:FieldNote %s id=\"note-2026-" + id + "\" formatVersion=\"1\" title=\""
                + id + "\" status=\"SEEN\"><text>text</text><machine href=\"../../machines/big.xmi#big\"/>"
                + "<cause href=\"../../machines/big.xmi#" + cause + "\"/>" + body + "</book:FieldNote>");
    }

    private void job(String id, String cause, String opened) throws Exception {
        shop.put("jobs/2026/job-2026-" + id + ".xmi", "<book:JobRecord %s id=\"job-2026-" + id + "\" formatVersion=\"1\" title=\""
                + id + "\" opened=\"" + opened + "\"><unit href=\"../../units/big-1.xmi#big-1\"/>"
                + (cause.isEmpty() ? "" : "<cause href=\"../../machines/big.xmi#" + cause + "\"/>") + "</book:JobRecord>");
    }

    private Counted counted(String cause) throws Exception {
        return cause(shop.ask(DEAD), cause).counted();
    }

    @Test
    void aJobOnAnotherMachineOfTheFamilyCountsHalfUnlessTheShopSaysOtherwise() throws Exception {
        job("one", "motor-burnt", "2026-05-05");
        var counted = counted("motor-burnt");
        assertEquals(new Counted(0, 0, (10 * 0.03 + 0.5) / 10.5, 10.5, "sometimes", 1), counted);
        assertEquals((10 * 0.03) / 10.5, counted("motor-wet").prior(), EXACT, "it was among the half of a job");
    }

    @ParameterizedTest
    @CsvSource({"0.2, 0.2", "1, 1", "3, 1", "0, 0"})
    void theShopsOwnWeightIsTaken(String weight, double counts) throws Exception {
        job("one", "motor-burnt", "2026-05-05");
        shop.put("shop.xmi", "<book:Shop %s id=\"shop\" formatVersion=\"1\" title=\"Shop\" familyWeight=\"" + weight + "\"/>");
        var counted = counted("motor-burnt");
        assertEquals((0.3 + counts) / (10 + counts), counted.prior(), EXACT);
        assertEquals(0, counted.events());
        assertEquals(counts > 0 ? 1 : 0, counted.relatives());
    }

    @Test
    void aCauseIsKnownAgainByItsTitleWhereItsIdIsAnother() throws Exception {
        job("one", "damp", "2026-05-05");
        assertEquals((0.3 + 0.5) / 10.5, counted("motor-wet").prior(), EXACT);
        job("two", "odd", "2026-07-05");
        assertEquals((0.3 + 0.5) / 11, counted("motor-wet").prior(), EXACT, "one of another cause is among the jobs");
    }

    @Test
    void whatTheOtherMachineHasNoLikeOfIsNotCountedThere() throws Exception {
        job("one", "lining-oily", "2026-05-05");
        var lining = cause(shop.ask("Load creeps down"), "lining-oily").counted();
        assertEquals(new Counted(0, 0, 0.01, 10, "rarely", 0), lining);
    }

    @Test
    void aMachineOfAnotherFamilyTellsNothing() throws Exception {
        job("one", "motor-burnt", "2026-05-05");
        sister("V");
        assertEquals(new Counted(0, 0, 0.03, 10, "sometimes", 0), counted("motor-burnt"));
        sister("");
        shop.machine(SmallShop.WINCH);
        assertEquals(0.03, counted("motor-burnt").prior(), EXACT);
    }

    @Test
    void aComponentFittedWithTheSameNumberIsTheLikeOfIt() throws Exception {
        shop.put("machines/winch.xmi", "<book:Machine %s id=\"winch\" formatVersion=\"1\" title=\"Winch\" family=\"W\">"
                + SmallShop.WINCH.replace("<components id=\"motor\" title=\"Motor\" functions=\"fn-pulls\">",
                        "<components id=\"motor\" title=\"Motor\" functions=\"fn-pulls\"><parts href=\"../parts/p1.xmi#p1\"/>")
                + "</book:Machine>");
        shop.put("machines/big.xmi", "<book:Machine %s id=\"big\" formatVersion=\"1\" title=\"Big winch\" family=\"W\">"
                + "<components id=\"drive\" title=\"Drive\"><parts href=\"../parts/p1.xmi#p1\"/>"
                + "<causes id=\"burnt-drive\" title=\"Motor burnt\"/></components></book:Machine>");
        job("one", "burnt-drive", "2026-05-05");
        assertEquals(1, counted("motor-burnt").relatives());
    }

    @Test
    void aTallyOfAnotherMachineIsWeighedAndNeverShownAsOurs() throws Exception {
        note("tally", "motor-burnt", "<seen count=\"8\" ofAbout=\"40\"/>");
        assertEquals(new Counted(0, 0, (0.3 + 4) / 30, 30, "sometimes", 8), counted("motor-burnt"));
        shop.job("own", "motor-burnt", "opened=\"2026-05-05\"", "");
        assertEquals(new Counted(1, 1, (0.3 + 1 + 4) / 30, 30, "sometimes", 8), counted("motor-burnt"));
    }

    @Test
    void aJobItsNoteAndASightingThereAreOneCase() throws Exception {
        job("one", "motor-burnt", "2026-05-05");
        note("one", "motor-burnt", "<job href=\"../../jobs/2026/job-2026-one.xmi#job-2026-one\"/>");
        assertEquals(1, counted("motor-burnt").relatives());
        assertEquals((0.3 + 0.5) / 10.5, counted("motor-burnt").prior(), EXACT);
    }

    @Test
    void aNoteOfTheFamilyTiesAFindingAtItsWeightAndSaysWhereItWasSeen() throws Exception {
        note("night", "motor-burnt", "<symptoms>Hums at night</symptoms>");
        var burnt = cause(shop.ask("Hums at night"), "motor-burnt");
        assertEquals(0.7 * 0.5, burnt.witnesses().get(0).weight(), EXACT);
        assertEquals("note, on 'Big winch', of the same family: seen to happen", Words.witness(burnt.witnesses().get(0)));
        note("night", "motor-burnt", "<symptoms>Hums at night</symptoms><seen count=\"4\" ofAbout=\"9\"/>");
        assertEquals("on 'Big winch', of the same family: seen to happen, seen in 4 of about 9 there",
                cause(shop.ask("Hums at night"), "motor-burnt").witnesses().get(0).says());
    }

    @Test
    void aJobThereIsAmongTheWitnesses() throws Exception {
        job("one", "motor-burnt", "2026-05-05");
        assertTrue(cause(shop.ask(DEAD), "motor-burnt").witnesses().stream()
                .anyMatch(one -> one.says().equals("on 'Big winch', of the same family: found in this job")));
    }

    @Test
    void aSupportingNoteOfTheFamilyNeverLowersItsCause() throws Exception {
        shop.note("own", "motor-burnt", "status=\"SEEN\"", "<seen count=\"3\" ofAbout=\"9\"/>");
        shop.job("own", "motor-burnt", "opened=\"2026-05-05\"", "");
        var before = cause(shop.ask(DEAD), "motor-burnt").chance();
        note("weak", "motor-burnt", "<seen count=\"1\" ofAbout=\"900\"/>");
        assertTrue(cause(shop.ask(DEAD), "motor-burnt").chance() >= before - EXACT);
    }

    @Test
    void theUnitsOwnChainIsNotRenewedByAJobOnAnotherMachine() throws Exception {
        job("one", "motor-burnt", "2026-05-05");
        var answer = shop.ask(question("winch-1", List.of(DEAD), List.of(), null));
        assertFalse(answer.chain().orElseThrow().members().stream().anyMatch(FunctionChain.Member::renewed));
    }
}
