// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;

/** Time that was really worked, and time that went by. */
final class Clock {

    private static final double NANOS_A_MICRO = 1_000;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

    /** Something to be timed. */
    interface Work {
        void run() throws Exception;
    }

    /**
     * What something took.
     *
     * @param cpu microseconds of computing
     * @param wall microseconds on the wall
     */
    record Time(double cpu, double wall) {

        Time plus(Time other) {
            return new Time(cpu + other.cpu, wall + other.wall);
        }
    }

    /** Times work of this thread alone. */
    Time ofThread(Work work) throws Exception {
        long wall = System.nanoTime();
        long cpu = threads.getCurrentThreadCpuTime();
        work.run();
        return time(threads.getCurrentThreadCpuTime() - cpu, System.nanoTime() - wall);
    }

    /** Times work of every thread that still lives at its end, compiler and collector left out. */
    Time ofLiveThreads(Work work) throws Exception {
        long wall = System.nanoTime();
        long cpu = live();
        work.run();
        return time(live() - cpu, System.nanoTime() - wall);
    }

    /** Times work of the whole process, compiler and collector included; exact to 10 ms. */
    Time ofProcess(Work work) throws Exception {
        long wall = System.nanoTime();
        long cpu = process();
        work.run();
        return time(process() - cpu, System.nanoTime() - wall);
    }

    private static Time time(long cpu, long wall) {
        return new Time(cpu / NANOS_A_MICRO, wall / NANOS_A_MICRO);
    }

    private long live() {
        return Arrays.stream(threads.getAllThreadIds()).map(threads::getThreadCpuTime).filter(time -> time > 0).sum();
    }

    private static long process() {
        return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class).getProcessCpuTime();
    }
}
