// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.benchlore.model.Address;
import org.benchlore.store.Row;
import org.junit.jupiter.api.Test;

/** 100,000 jobs, in processor time: a change costs what changed, an answer what it is about, and memory stays within bounds. */
class ManyJobsTest {

    private static final int JOBS = 100_000;
    private static final int UNITS = 20_000;
    private static final int COMPONENTS = 300;

    private static List<Row> jobs() {
        var random = new Random(3);
        var book = new TestBook();
        var rows = new ArrayList<Row>(JOBS);
        var components = new ArrayList<Address>();
        for (int i = 0; i < COMPONENTS; i++) {
            components.add(TestBook.component("lorry", "component-" + i));
        }
        for (int i = 0; i < JOBS; i++) {
            var day = LocalDate.of(2016, 1, 1).plusDays(random.nextInt(3900));
            var job = book.job("" + i, "u" + random.nextInt(UNITS), day.toString());
            for (int k = 0; k < 3; k++) {
                job.left(components.get(random.nextInt(COMPONENTS)));
            }
            rows.add(job.renew(components.get(random.nextInt(COMPONENTS))).row());
        }
        return rows;
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    @Test
    void aChangeAndAnAnswerTakeNoPassOverAllAndMemoryIsBounded() {
        var rows = jobs();
        long before = used();
        var evidence = new Evidence(rows.stream());
        long bytes = used() - before;
        var component = TestBook.component("lorry", "component-7");
        var question = Question.of(component, TestBook.TODAY);
        int of = evidence.about(question, CountingRules.usual()).left().of();
        var clock = ManagementFactory.getThreadMXBean();
        var millis = new double[41];
        for (int i = 0; i < millis.length; i++) {
            long start = clock.getCurrentThreadCpuTime();
            var row = rows.get(i);
            evidence.change(row.path(), i % 2 == 0 ? Optional.empty() : Optional.of(rows.get(i - 1)));
            evidence.about(question, CountingRules.usual());
            millis[i] = (clock.getCurrentThreadCpuTime() - start) / 1e6;
        }
        Arrays.sort(millis);
        System.getLogger("bench").log(System.Logger.Level.INFO, "change and answer over " + JOBS + " jobs: "
                + millis[20] + " ms, at worst " + millis[40] + "; memory beside the rows " + bytes / 1_000_000 + " MB");
        assertTrue(of > 500, () -> "too few jobs are about the component: " + of);
        assertTrue(millis[20] < 50, () -> "a change and an answer took " + millis[20] + " ms");
        assertTrue(bytes < 120_000_000, () -> bytes + " bytes beside the rows");
    }

    @Test
    void manySmallChangesLeaveWhatOnePassWouldFind() {
        var rows = jobs().subList(0, 5_000);
        var question = Question.of(TestBook.component("lorry", "component-7"), TestBook.TODAY);
        var evidence = new Evidence(rows.stream());
        var random = new Random(5);
        var now = new ArrayList<Optional<Row>>(rows.stream().map(Optional::of).toList());
        for (int i = 0; i < 2_000; i++) {
            int one = random.nextInt(rows.size());
            var next = random.nextBoolean() ? Optional.<Row>empty() : Optional.of(rows.get(one));
            now.set(one, next);
            evidence.change(rows.get(one).path(), next);
        }
        assertEquals(new Evidence(now.stream().flatMap(Optional::stream)).about(question, CountingRules.usual()),
                evidence.about(question, CountingRules.usual()));
    }
}
