package dev.brinebook.log;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.slf4j.event.Level;

/**
 * Writes lines to the standard output, from a thread of its own: whoever has something to tell never waits for a reader that
 * stands still or a disk that is full. Lines that cannot wait are counted and lost.
 */
public final class LogOutput {

    static final int MOST_WAITING = 1_024;
    private static final LogOutput STANDARD = new LogOutput();

    private final BlockingQueue<byte[]> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
    private final AtomicLong unwritten = new AtomicLong();
    private final AtomicLong lost = new AtomicLong();

    private LogOutput() {
        Thread writer = new Thread(this::writeForEver, "log");
        writer.setDaemon(true);
        writer.start();
    }

    static void add(LogLine line) {
        STANDARD.unwritten.incrementAndGet();
        if (!STANDARD.waiting.offer(line.bytes())) {
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
        try {
            while (true) {
                write(waiting.take());
                unwritten.decrementAndGet();
                long gone = lost.getAndSet(0);
                if (gone > 0) {
                    write(new LogLine(Instant.now(), Level.WARN, LogOutput.class.getName(), gone + " lines were lost",
                            List.of(), null).bytes());
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void write(byte[] line) {
        if (System.out.checkError()) {
            // The line before may have been written in part.
            System.out.write('\n');
        }
        System.out.write(line, 0, line.length);
        System.out.flush();
    }
}
