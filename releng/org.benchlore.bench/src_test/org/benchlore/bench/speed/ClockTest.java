// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Computing time is not waiting time. */
class ClockTest {

    private static final double MILLI = 1_000;

    @Test
    void waitingIsNotComputing() throws Exception {
        var time = new Clock().ofThread(() -> Thread.sleep(60));
        assertTrue(time.wall() >= 55 * MILLI && time.cpu() < 30 * MILLI, time::toString);
    }

    @Test
    void workOfAnotherThreadCountsWhereAllThreadsDo() throws Exception {
        var clock = new Clock();
        var other = new Thread(ClockTest::work);
        other.setDaemon(true);
        other.start();
        var time = clock.ofLiveThreads(() -> Thread.sleep(200));
        other.interrupt();
        assertTrue(time.cpu() > 5 * MILLI, time::toString);
    }

    private static void work() {
        while (!Thread.currentThread().isInterrupted()) {
            Thread.onSpinWait();
        }
    }
}
