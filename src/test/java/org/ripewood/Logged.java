package org.ripewood;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/** What the service writes into its log while this is open. */
public final class Logged extends Handler implements AutoCloseable {

    private final Logger root = Logger.getLogger("");
    private final List<LogRecord> records = new CopyOnWriteArrayList<>();

    public Logged() {
        root.addHandler(this);
    }

    /** Errors, which are for whoever runs the service to look after. */
    public List<String> errors() {
        return records.stream()
                .filter(record -> record.getLevel().intValue() > Level.WARNING.intValue())
                .map(record -> record.getLoggerName() + ": " + record.getMessage())
                .toList();
    }

    /** Texts of what one class wrote. */
    public List<String> of(Class<?> writer) {
        return of(writer.getName());
    }

    /** Texts of what was written under a name. */
    public List<String> of(String logger) {
        return records.stream()
                .filter(record -> logger.equals(record.getLoggerName()))
                .map(Logged::text)
                .toList();
    }

    private static String text(LogRecord record) {
        var given = record.getParameters();
        return given == null || given.length == 0
                ? record.getMessage()
                : record.getMessage().formatted(given);
    }

    @Override
    public void publish(LogRecord record) {
        records.add(record);
    }

    @Override
    public void flush() {
        // nothing is held back
    }

    @Override
    public void close() {
        root.removeHandler(this);
    }
}
