// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.zip;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

import org.benchlore.pack.PackException;
import org.benchlore.pack.PackRequest;
import org.benchlore.pack.PackedLibrary;
import org.benchlore.pack.Selector;
import org.benchlore.pack.Shops;
import org.benchlore.pack.take.Taking;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

class HostilePackTest {

    private static final int COUNT = 200;

    @TempDir
    Path scratch;

    private Library taker;
    private HostilePacks packs;

    @BeforeEach
    void make() throws Exception {
        var shops = new Shops(scratch);
        var good = new LinkedHashMap<String, byte[]>();
        try (var origin = shops.demonstration("origin");
                var packed = PackedLibrary.of(origin, Selector.of(origin, PackRequest.of("renew-pto-actuator")), new NullProgressMonitor())) {
            for (var path : packed.paths()) {
                good.put(path, packed.bytes(path));
            }
        }
        packs = new HostilePacks(good);
        taker = shops.empty("inner");
    }

    private void take(byte[] zip) throws Exception {
        var file = Files.write(scratch.resolve("pack.zip"), zip);
        try (var pack = PackFile.open(file, new NullProgressMonitor())) {
            new Taking(taker).take(pack, Taking.Conflicts.TAKE_THEIRS, new NullProgressMonitor());
        }
    }

    @Test
    void theSameHandWritesAPackThatIsTaken() throws Exception {
        take(packs.harmless());
        assertTrue(taker.top("renew-pto-actuator").isPresent());
    }

    @Test
    void noneIsTakenNoneWritesOutsideAndEachIsRefusedInOneLine() throws Exception {
        var before = everything();
        var all = packs.all(COUNT);
        assertEquals(COUNT, all.size());
        assertAll(all.stream().map(hostile -> (Executable) () -> {
            var refused = assertThrows(PackException.class, () -> take(hostile.zip()), hostile.what());
            assertFalse(refused.getMessage().contains("\n") || refused.getMessage().length() > 400, hostile.what() + ": " + refused.getMessage());
            assertTrue(refused.getMessage().endsWith("."), hostile.what() + ": " + refused.getMessage());
            assertTrue(before.equals(everything()), hostile.what());
        }));
    }

    /** Everything below the scratch folder but the pack that is being tried and the lock. */
    private Map<String, Long> everything() throws Exception {
        var found = new LinkedHashMap<String, Long>();
        try (Stream<Path> files = Files.walk(scratch)) {
            for (var file : files.sorted().toList()) {
                if (!file.endsWith("pack.zip") && !file.toString().contains("cache-")) {
                    found.put(scratch.relativize(file).toString(), Files.isDirectory(file) ? 0 : Files.size(file));
                }
            }
        }
        return found;
    }
}
