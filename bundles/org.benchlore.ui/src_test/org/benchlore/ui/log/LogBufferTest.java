// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

import org.junit.jupiter.api.Test;

class LogBufferTest {

    private final LogBuffer buffer = new LogBuffer(2);

    private static LogRecord record(String text) {
        return new LogRecord(Instant.EPOCH, LogRecord.Level.INFO, "store", text, "");
    }

    private List<String> texts() {
        return buffer.records().stream().map(LogRecord::text).toList();
    }

    @Test
    void oldestRecordsMakeRoom() {
        List.of("one", "two", "three").forEach(text -> buffer.add(record(text)));
        assertEquals(List.of("two", "three"), texts());
    }

    @Test
    void clearForgetsEverything() {
        buffer.add(record("one"));
        buffer.clear();
        assertEquals(List.of(), texts());
    }

    @Test
    void listenerIsToldUntilItIsRemoved() {
        var told = new AtomicInteger();
        var remove = buffer.onChange(told::incrementAndGet);
        buffer.add(record("one"));
        remove.run();
        buffer.add(record("two"));
        assertEquals(1, told.get());
    }

    @Test
    void detailNamesEveryCause() {
        var detail = LogRecord.detail(new IllegalStateException("outer", new IllegalArgumentException("inner")));
        assertTrue(detail.contains("outer") && detail.contains("Caused by: java.lang.IllegalArgumentException: inner"));
    }

    @Test
    void textHoldsTimeLevelSourceAndWords() {
        assertEquals("1970-01-01T00:00:00Z INFO store: one", record("one").asText());
    }
}
