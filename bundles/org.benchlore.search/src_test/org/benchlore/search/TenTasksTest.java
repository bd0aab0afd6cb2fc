// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What somebody at the bench would type, chosen from the titles of the finished demonstration library by a person who
 * had not written it. Common practice, no source: what is meant stands among the first five.
 */
@TestInstance(Lifecycle.PER_CLASS)
class TenTasksTest {

    private Demonstration demonstration;

    @BeforeAll
    void open(@TempDir Path scratch) throws Exception {
        demonstration = Demonstration.open(scratch);
    }

    @AfterAll
    void close() throws Exception {
        demonstration.close();
    }

    @ParameterizedTest
    @CsvSource({"oil dripping at brush hub, note-2019-cord-behind-the-hub-e4zb",
        "van no power P0299, note-2022-split-under-the-elbow-hrdj",
        "mast chain uneven, note-2023-forklift-standing-pulley-files-the-chain-v9br",
        "boat overheats impeller blades gone, renew-boat-raw-water-impeller",
        "genset hunting speed, note-2024-generator-beard-on-the-pickup-t4hb",
        "people stuck in the lift, note-2021-lift-talk-to-them-d9vb",
        "water pump frost burst, note-2021-two-pumps-burst-vyk9",
        "digger slews weak when cold, note-2021-excavator-pilot-filter-before-slew-motor-k3vp",
        "truck moves with nobody on the seat, note-2020-forklift-paper-clip-in-the-seat-switch-m2jv",
        "p0401 again after new egr, note-2021-p0401-comes-back-ssdw"})
    void whatIsMeantStandsAmongTheFirstFive(String typed, String meant) {
        var ids = demonstration.index().find(Query.of(typed)).hits().stream().map(hit -> hit.row().id()).limit(5).toList();
        assertTrue(ids.contains(meant), ids::toString);
    }
}
