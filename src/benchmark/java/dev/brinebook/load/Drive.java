// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.IntStream;

/** Sends requests to a server over kept connections, each of a caller with a key of its own. */
final class Drive {

    private final List<String> keys;

    Drive(List<String> keys) {
        this.keys = keys;
    }

    /**
     * What some requests cost.
     *
     * @param processorMicros processor time of the server for each, without that of the compiler
     * @param perSecond answers a second
     * @param latencies from when each was due to its last byte, milliseconds, ascending
     */
    record Cost(double processorMicros, double perSecond, double[] latencies) {

        double quantile(double share) {
            return latencies[(int) Math.min(latencies.length - 1, Math.round(share * latencies.length))];
        }
    }

    /** Sends one after another on each connection, as fast as they are answered. */
    Cost closed(ServerProcess server, List<Message> messages, int connections) throws IOException {
        return run(server, messages, connections, 0);
    }

    /** Sends as many a second as are said, evenly, whether or not those before are answered, as long as a connection is free. */
    Cost open(ServerProcess server, List<Message> messages, int connections, double perSecond) throws IOException {
        return run(server, messages, connections, perSecond);
    }

    private Cost run(ServerProcess server, List<Message> messages, int connections, double perSecond) throws IOException {
        AtomicInteger next = new AtomicInteger();
        double[] latencies = new double[messages.size()];
        double before = server.answeringSeconds();
        long began = System.nanoTime();
        ExecutorService threads = Executors.newFixedThreadPool(connections);
        try {
            CompletableFuture.allOf(IntStream.range(0, connections).mapToObj(number -> CompletableFuture.runAsync(() -> {
                try (Connection connection = new Connection(server.port(), keys.get(number % keys.size()))) {
                    for (int i = next.getAndIncrement(); i < messages.size(); i = next.getAndIncrement()) {
                        long due = perSecond == 0 ? System.nanoTime() : began + (long) (i * 1e9 / perSecond);
                        waitUntil(due);
                        connection.exchange(messages.get(i));
                        latencies[i] = (System.nanoTime() - due) / 1e6;
                    }
                } catch (IOException e) {
                    next.set(messages.size());
                    throw new UncheckedIOException(server.name(), e);
                }
            }, threads)).toArray(CompletableFuture[]::new)).join();
        } finally {
            threads.shutdown();
        }
        double seconds = (System.nanoTime() - began) / 1e9;
        double processor = server.answeringSeconds() - before;
        Arrays.sort(latencies);
        return new Cost(processor * 1e6 / messages.size(), messages.size() / seconds, latencies);
    }

    private static void waitUntil(long due) {
        for (long left = due - System.nanoTime(); left > 0; left = due - System.nanoTime()) {
            LockSupport.parkNanos(left);
        }
    }

    /** Sends what may also be refused, for some seconds at most; gives how many were answered with 200. */
    int warm(ServerProcess server, List<Message> messages, int connections, double seconds) {
        AtomicInteger next = new AtomicInteger();
        AtomicInteger answered = new AtomicInteger();
        long end = System.nanoTime() + (long) (seconds * TimeUnit.SECONDS.toNanos(1));
        CompletableFuture.allOf(IntStream.range(0, connections).mapToObj(number -> CompletableFuture.runAsync(() -> {
            try (Connection connection = new Connection(server.port(), keys.get(number % keys.size()))) {
                for (int i = next.getAndIncrement(); i < messages.size() && System.nanoTime() < end; i = next.getAndIncrement()) {
                    answered.addAndGet(connection.status(messages.get(i)) == 200 ? 1 : 0);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(server.name(), e);
            }
        })).toArray(CompletableFuture[]::new)).join();
        return answered.get();
    }
}
