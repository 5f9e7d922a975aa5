// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.log;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.slf4j.event.Level;

/**
 * Writes lines to the standard output, from a thread of its own: a thread that logs never waits for a reader that has stopped or a disk
 * that is full, and does not put its line into words. Lines that cannot wait are counted and lost.
 */
public final class LogOutput {

    static final int MOST_WAITING = 1_024;
    /** Lines that come meanwhile are written at once: to wake the writer for each takes longer than to make the line. */
    private static final long PAUSE_MILLISECONDS = 10;
    private static final LogOutput STANDARD = new LogOutput();

    private final BlockingQueue<LogLine> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
    private final AtomicLong unwritten = new AtomicLong();
    private final AtomicLong lost = new AtomicLong();

    private LogOutput() {
        Thread writer = new Thread(this::writeForEver, "log");
        writer.setDaemon(true);
        writer.start();
    }

    static void add(LogLine line) {
        STANDARD.unwritten.incrementAndGet();
        if (!STANDARD.waiting.offer(line)) {
            STANDARD.unwritten.decrementAndGet();
            STANDARD.lost.incrementAndGet();
        }
    }

    /** Waits until all lines so far are written, but no longer than they can take. */
    public static void finish() {
        try {
            for (int i = 0; i < 100 && STANDARD.unwritten.get() > 0; i++) {
                TimeUnit.MILLISECONDS.sleep(10);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void writeForEver() {
        List<LogLine> lines = new ArrayList<>(MOST_WAITING);
        try {
            while (true) {
                lines.add(waiting.take());
                waiting.drainTo(lines);
                write(lines);
                unwritten.addAndGet(-lines.size());
                lines.clear();
                long gone = lost.getAndSet(0);
                if (gone > 0) {
                    write(List.of(new LogLine(Instant.now(), Level.WARN, LogOutput.class.getName(), gone + " lines were lost",
                            List.of(), null)));
                }
                TimeUnit.MILLISECONDS.sleep(PAUSE_MILLISECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void write(List<LogLine> lines) {
        if (System.out.checkError()) {
            // The line before may have been written in part.
            System.out.write('\n');
        }
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> line.appendTo(text));
        byte[] all = text.toString().getBytes(StandardCharsets.UTF_8);
        System.out.write(all, 0, all.length);
        System.out.flush();
    }
}
