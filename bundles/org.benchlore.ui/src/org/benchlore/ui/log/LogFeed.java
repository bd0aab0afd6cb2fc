// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.log;

import java.time.Instant;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;

/** Brings what is logged into the buffer: the platform's log, and the system loggers of the headless rooms. */
final class LogFeed extends Handler implements ILogListener {

    private final LogBuffer buffer;
    private final SimpleFormatter formatter = new SimpleFormatter();

    LogFeed(LogBuffer buffer) {
        this.buffer = buffer;
    }

    void install() {
        Logger.getLogger("").addHandler(this);
        Platform.addLogListener(this);
    }

    void remove() {
        Platform.removeLogListener(this);
        Logger.getLogger("").removeHandler(this);
    }

    @Override
    public void publish(java.util.logging.LogRecord record) {
        if (isLoggable(record) && record.getLevel().intValue() >= Level.INFO.intValue()) {
            buffer.add(new LogRecord(record.getInstant(), level(record.getLevel()),
                    String.valueOf(record.getLoggerName()), formatter.formatMessage(record),
                    LogRecord.detail(record.getThrown())));
        }
    }

    private static LogRecord.Level level(Level level) {
        if (level.intValue() >= Level.SEVERE.intValue()) {
            return LogRecord.Level.ERROR;
        }
        return level.intValue() >= Level.WARNING.intValue() ? LogRecord.Level.WARNING : LogRecord.Level.INFO;
    }

    @Override
    public void logging(IStatus status, String plugin) {
        buffer.add(new LogRecord(Instant.now(), level(status), status.getPlugin(), status.getMessage(),
                LogRecord.detail(status.getException())));
    }

    private static LogRecord.Level level(IStatus status) {
        return switch (status.getSeverity()) {
            case IStatus.ERROR -> LogRecord.Level.ERROR;
            case IStatus.WARNING -> LogRecord.Level.WARNING;
            default -> LogRecord.Level.INFO;
        };
    }

    @Override
    public void flush() {
        // Records are shown at once.
    }

    @Override
    public void close() {
        // Nothing is held open.
    }
}
