// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Catalogue.Stamp;
import org.junit.jupiter.api.Test;

/** Who types an id from memory is told which one was meant. */
class UnknownIdTest {

    private static Catalogue catalogue(Kind kind, String... ids) {
        var map = new TreeMap<String, Entry>();
        for (var id : ids) {
            var path = kind.path(id);
            var row = new Row(new Address(path, id), kind, id, "", Optional.empty(), true, List.of(), List.of(), List.of(),
                    List.of(), List.of(), Optional.empty(), List.of(), Set.of(), Optional.empty(), id.hashCode());
            map.put(path, new Entry(path, new Stamp(1, 1), id, Optional.of(row), List.of()));
        }
        return new Catalogue(map);
    }

    @Test
    void aNumberWithoutItsZeroFindsTheOneThatIsMeantFirst() {
        var says = new UnknownId(catalogue(Kind.UNIT, "lorry-08", "lorry-17", "van-08"), Kind.UNIT, Kind.MACHINE);
        assertEquals("There is no machine or unit 'lorry-8'; near it: lorry-08, lorry-17, van-08; 'find TEXT --kind unit' finds ids",
                says.says("lorry-8", "machine or unit"));
        assertTrue(says.says("Lorry8", "unit").contains("near it: lorry-08"));
    }

    @Test
    void aSlipAtTheEndOfAWordIsNear() {
        var catalogue = catalogue(Kind.PROCEDURE, "renew-hub-seal", "bleed-brakes");
        assertEquals("There is no procedure 'renew-hub-seals'; near it: renew-hub-seal; 'find TEXT --kind procedure' finds ids",
                new UnknownId(catalogue, Kind.PROCEDURE).says("renew-hub-seals", "procedure"));
    }

    @Test
    void whatIsNearNothingSaysHowIdsAreFound() {
        assertEquals("There is no element 'x'; 'find TEXT' finds ids",
                new UnknownId(catalogue(Kind.PROCEDURE, "bleed-brakes")).says("x", "element"));
    }

    @Test
    void otherKindsAreNoHelp() {
        assertEquals("There is no procedure 'lorry-8'; 'find TEXT --kind procedure' finds ids",
                new UnknownId(catalogue(Kind.UNIT, "lorry-08"), Kind.PROCEDURE).says("lorry-8", "procedure"));
    }

    @Test
    void numbersAreTheSameOrNot() {
        assertEquals(0.5, UnknownId.nearness("lorry-08", "lorry-081"), 1e-9);
        assertEquals(1, UnknownId.nearness("lorry-8", "lorry-008"), 1e-9);
        assertEquals(0, UnknownId.nearness("", "lorry-008"), 1e-9);
    }
}
