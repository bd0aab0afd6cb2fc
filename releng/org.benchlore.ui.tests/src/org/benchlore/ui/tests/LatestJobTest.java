// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.junit.jupiter.api.Test;

class LatestJobTest {

    private final WindowDriver window = new WindowDriver();
    private final List<String> answers = new ArrayList<>();
    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch goOn = new CountDownLatch(1);

    private final LatestJob<String, String> job = new LatestJob<>("Answering", this::answer,
            new WindowThread(window.shell()), (question, answer) -> answers.add(answer));

    private String answer(String question) {
        if (question.equals("slow")) {
            begun.countDown();
            await(goOn);
        }
        return question;
    }

    private static void await(CountDownLatch latch) {
        try {
            assertTrue(latch.await(10, TimeUnit.SECONDS));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void answerToAnOlderQuestionNeverComes() {
        job.ask("slow", 0);
        await(begun);
        job.ask("new", 0);
        goOn.countDown();
        window.waitUntil("the new answer is there", () -> answers.contains("new"));
        assertEquals(List.of("new"), answers);
    }

    @Test
    void answerOnItsWayToTheWindowIsDroppedToo() throws Exception {
        job.ask("old", 0);
        job.join();
        job.ask("new", 0);
        window.waitUntil("the new answer is there", () -> answers.contains("new"));
        assertEquals(List.of("new"), answers);
    }

    @Test
    void nothingComesOnceItIsForgotten() throws Exception {
        job.ask("slow", 0);
        await(begun);
        job.forget();
        goOn.countDown();
        job.join();
        window.workFor(50);
        assertEquals(List.of(), answers);
    }
}
